package org.standwright.part;

import java.util.Locale;
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
