package org.standwright.part;

import java.util.Locale;
import java.util.OptionalDouble;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Require;

/**
 * A rectangle with rounded corners, routed into one face or right through. Where it reaches an edge of the blank it is
 * open there: corners on that edge stay square.
 *
 * @param face that the tool enters by
 * @param area within the blank, in part coordinates
 * @param radius of the corners, mm, at most half of either side; 0 for square ones
 * @param depth from the face, mm, less than the thickness; empty for a cutout right through
 * @param purpose what goes in or comes through, for the machining notes: 'motor plate', 'finger notch'
 */
public record Pocket(Face face, Rect area, double radius, OptionalDouble depth, String purpose) implements Feature {
    public Pocket {
        Require.named("purpose of a pocket", purpose);
        Require.notNegative("corner radius", radius, purpose);
        double narrow = Math.min(area.width(), area.height());
        if (Grid.less(narrow, 2 * radius)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "corner radius of '%s' is %.3f mm, but must be at most half of its narrow side of %.3f mm.",
                    purpose,
                    radius,
                    narrow));
        }
        if (depth.isPresent()) {
            Require.positive("depth", depth.getAsDouble(), purpose);
        }
    }

    /** A cutout. */
    public static Pocket through(Rect area, double radius, String purpose) {
        return new Pocket(Face.SHOW, area, radius, OptionalDouble.empty(), purpose);
    }

    public static Pocket blind(Face face, Rect area, double radius, double depth, String purpose) {
        return new Pocket(face, area, radius, OptionalDouble.of(depth), purpose);
    }

    /** How far it reaches into a board this thick, mm. */
    public double depthIn(double thickness) {
        return depth.orElse(thickness);
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.pocket(this);
    }
}
