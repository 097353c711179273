package org.standwright.part;

import org.standwright.geom.Rect;
import org.standwright.geom.Require;

/**
 * A round hole bored square into an edge; as deep as the board reaches that way, it comes out at the far edge.
 *
 * @param along position of its centre along the edge: y on an end, x on the other two, mm
 * @param z of its centre above the bench face, mm
 * @param depth from the edge, mm, at most what the board reaches in that direction
 * @param purpose what goes in, for the machining notes: 'pilot for panel screw'
 */
public record EdgeHole(Edge edge, double along, double z, double diameter, double depth, String purpose)
        implements Feature {
    public EdgeHole {
        Require.named("purpose of an edge hole", purpose);
        Require.positive("z", z, purpose);
        Require.positive("diameter", diameter, purpose);
        Require.positive("depth", depth, purpose);
    }

    /** What it covers of a board of this size, seen from above. */
    public Rect area(double partLength, double partWidth) {
        double r = diameter / 2;
        return switch (edge) {
            case X0 -> new Rect(0, along - r, depth, along + r);
            case X1 -> new Rect(partLength - depth, along - r, partLength, along + r);
            case Y0 -> new Rect(along - r, 0, along + r, depth);
            case Y1 -> new Rect(along - r, partWidth - depth, along + r, partWidth);
        };
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.edgeHole(this);
    }
}
