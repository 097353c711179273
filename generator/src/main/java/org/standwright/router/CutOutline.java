package org.standwright.router;

import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.part.Banding;
import org.standwright.part.Edge;
import org.standwright.part.Part;

/** What a router cuts a part to: see {@link #of}. */
public final class CutOutline {
    private CutOutline() {}

    /**
     * Its contour, where it has one and leaves the sheet at its cut size, else its rough blank, in the part's frame. What
     * covers an edge comes on later, so there it is smaller than the finished part.
     */
    public static Outline of(Part part) {
        var blank = rough(part);
        if (part.contour().isEmpty() || part.oversize() > 0) {
            return Outline.of(blank);
        }
        return part.contour().get().outline().within(blank);
    }

    /** Its rough blank, what a saw cuts, in the part's frame. */
    public static Rect rough(Part part) {
        double over = part.oversize();
        return new Rect(
                cover(part, Edge.X0) - over,
                cover(part, Edge.Y0) - over,
                part.length() - cover(part, Edge.X1) + over,
                part.width() - cover(part, Edge.Y1) + over);
    }

    private static double cover(Part part, Edge edge) {
        return part.bands().on(edge).map(Banding::thickness).orElse(0.0);
    }
}
