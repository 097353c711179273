package org.standwright.drawing.figure;

/** A board as drawn: its lower left corner lies at the origin of the figure's own frame. */
public record BoardFigure(Figure figure, Scale scale) {}
