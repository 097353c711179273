package org.standwright.part;

import java.util.Locale;
import java.util.OptionalDouble;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Require;

/**
 * An edge sawn off at an angle over its whole length: all the way through the thickness (a bevel proper, the mating edge
 * of a cleat), or part of it (a chamfer).
 *
 * @param face at which the board loses most
 * @param tilt of the blade from square, degrees
 * @param depth how far below {@code face} the cut comes out at the edge, mm, at most the thickness
 */
public record Bevel(Edge edge, Face face, double tilt, double depth) implements Feature {
    public Bevel {
        Require.positive("depth", depth, "bevel");
        if (!(tilt > 0 && tilt < 90)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "tilt of a bevel is %s°, but must lie between 0 and 90.", tilt));
        }
    }

    /** How far the edge moves back on the face: depth times the tangent of the tilt, mm. */
    public double setback() {
        return depth * StrictMath.tan(StrictMath.toRadians(tilt));
    }

    /**
     * What is taken off the sharp tip of a bevel that goes through a board this thick, square to the edge, mm: 0 of one
     * whose tip stays sharp. A cut that leaves half of the thickness or more is a chamfer, which has no such tip.
     */
    public OptionalDouble blunted(double thickness) {
        return Grid.less(thickness, 2 * depth)
                ? OptionalDouble.of((thickness - depth) * StrictMath.tan(StrictMath.toRadians(tilt)))
                : OptionalDouble.empty();
    }

    /** What it covers of a board of this size, seen from above. */
    public Rect area(double partLength, double partWidth) {
        return edge.strip(setback(), partLength, partWidth);
    }

    @Override
    public String purpose() {
        return "bevel";
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.bevel(this);
    }
}
