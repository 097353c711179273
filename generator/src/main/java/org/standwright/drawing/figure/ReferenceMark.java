package org.standwright.drawing.figure;

import java.util.List;
import java.util.Optional;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.geom.Rect;

/**
 * A wedge in the corner of a piece where its reference end and reference edge meet. Its long side lies along the
 * reference edge.
 */
record ReferenceMark(Rect room, Shape wedge) {
    private static final double LONG = 4;
    private static final double SHORT = 1.8;
    /** Most of a piece's side that it takes. */
    private static final double SHARE = 0.3;

    /**
     * @param piece on paper, its show face up
     * @param turned by a quarter counter-clockwise, so that its reference edge lies at the right
     */
    static ReferenceMark of(Rect piece, boolean turned) {
        double along = Math.min(LONG, SHARE * (turned ? piece.height() : piece.width()));
        double across = Math.min(SHORT, SHARE * (turned ? piece.width() : piece.height()));
        double x = turned ? piece.x1() : piece.x0();
        double y = piece.y0();
        var room = turned ? new Rect(x - across, y, x, y + along) : new Rect(x, y, x + along, y + across);
        var points = turned
                ? List.of(new Point(x, y), new Point(x, y + along), new Point(x - across, y))
                : List.of(new Point(x, y), new Point(x + along, y), new Point(x, y + across));
        return new ReferenceMark(room, new Polygon(points, Optional.of(Pen.DIMENSION), Fill.GRAY));
    }
}
