/**
 * Shapes on paper and the room that lettering takes: not yet PDF, SVG or screen.
 *
 * <p>Paper frame: millimetres, x to the right, y up, origin at the lower left corner. This package knows no furniture;
 * what draws it is in {@link org.standwright.drawing.figure}. An output format is a
 * {@link org.standwright.drawing.ShapeVisitor} of its own.
 */
package org.standwright.drawing;
