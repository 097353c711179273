package org.standwright.part;

import java.util.Locale;
import java.util.OptionalDouble;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Require;
import org.standwright.geom.Vec2;

/**
 * An outline with rounded corners, routed into one face or right through. Where a side of it lies on an edge of the
 * blank it is open there, and the corners on that edge stay square: so a notch or a half-lap is a pocket too.
 *
 * @param face that the tool enters by
 * @param outline within the blank, in part coordinates
 * @param radius of the corners that a round tool can't cut sharp, mm; 0 for square ones. Corners that point into the
 *     pocket stay sharp.
 * @param depth from the face, mm, less than the thickness; empty for a cutout right through
 * @param purpose what goes in or comes through, for the machining notes: 'motor plate', 'finger notch'
 */
public record Pocket(Face face, Outline outline, double radius, OptionalDouble depth, String purpose)
        implements Feature {
    public Pocket {
        Require.named("purpose of a pocket", purpose);
        Require.notNegative("corner radius", radius, purpose);
        if (depth.isPresent()) {
            Require.positive("depth", depth.getAsDouble(), purpose);
        }
        for (int i = 0; i < outline.corners().size(); i++) {
            double side = outline.corner(i + 1).minus(outline.corner(i)).length();
            double rounded = rounding(outline, radius, i) + rounding(outline, radius, i + 1);
            if (Grid.less(side, rounded)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "corner radius of '%s' is %.3f mm, but on its side of %.3f mm it can be at most %.3f mm.",
                        purpose,
                        radius,
                        side,
                        radius * side / rounded));
            }
        }
    }

    /** A cutout. */
    public static Pocket through(Rect area, double radius, String purpose) {
        return new Pocket(Face.SHOW, Outline.of(area), radius, OptionalDouble.empty(), purpose);
    }

    public static Pocket blind(Face face, Rect area, double radius, double depth, String purpose) {
        return new Pocket(face, Outline.of(area), radius, OptionalDouble.of(depth), purpose);
    }

    /** The smallest rectangle around it. */
    public Rect area() {
        return outline.bounds();
    }

    /** How far it reaches into a board this thick, mm. */
    public double depthIn(double thickness) {
        return depth.orElse(thickness);
    }

    /** How much of each side the rounding of a corner takes, mm; 0 for one that points into the pocket. */
    public double rounding(int corner) {
        return rounding(outline, radius, corner);
    }

    /** r / tan(half the corner's angle), by 1 / tan(a / 2) = (1 + cos a) / sin a. */
    private static double rounding(Outline outline, double radius, int corner) {
        var at = outline.corner(corner);
        Vec2 back = outline.corner(corner - 1).minus(at);
        Vec2 on = outline.corner(corner + 1).minus(at);
        double sine = on.cross(back);
        double cosine = on.x() * back.x() + on.y() * back.y();
        return sine <= Grid.STEP ? 0 : radius * (on.length() * back.length() + cosine) / sine;
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.pocket(this);
    }
}
