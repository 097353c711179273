package org.standwright.drawing.plot;

/** What one output makes of each kind of mark. */
public interface MarkVisitor<R> {
    R closed(Mark.Closed closed);

    R open(Mark.Open open);

    R circle(Mark.Circle circle);

    R spot(Mark.Spot spot);

    R words(Mark.Words words);
}
