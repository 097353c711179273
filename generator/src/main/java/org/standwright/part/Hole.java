package org.standwright.part;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Require;

/**
 * A round hole bored square to a face.
 *
 * @param face that the drill enters by
 * @param depth from the face, mm, less than the thickness; empty for a hole right through
 * @param recess what widens it at the face that the drill enters by
 * @param purpose what goes in, for the machining notes: 'slide pilot', 'caster bolt'
 */
public record Hole(
        Face face, double x, double y, double diameter, OptionalDouble depth, Optional<Recess> recess, String purpose)
        implements Feature {
    public Hole {
        Require.named("purpose of a hole", purpose);
        Require.positive("diameter", diameter, purpose);
        if (depth.isPresent()) {
            Require.positive("depth", depth.getAsDouble(), purpose);
        }
        if (recess.isPresent() && !Grid.less(diameter, recess.get().diameter())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "recess of '%s' is %.3f mm wide, but must be wider than its hole of %.3f mm.",
                    purpose,
                    recess.get().diameter(),
                    diameter));
        }
    }

    public static Hole through(double x, double y, double diameter, String purpose) {
        return new Hole(Face.SHOW, x, y, diameter, OptionalDouble.empty(), Optional.empty(), purpose);
    }

    public static Hole blind(Face face, double x, double y, double diameter, double depth, String purpose) {
        return new Hole(face, x, y, diameter, OptionalDouble.of(depth), Optional.empty(), purpose);
    }

    /** The same hole, widened at its face. */
    public Hole with(Recess wider) {
        return new Hole(face, x, y, diameter, depth, Optional.of(wider), purpose);
    }

    /** How far it reaches into a board this thick, mm. */
    public double depthIn(double thickness) {
        return depth.orElse(thickness);
    }

    /** The square around all of it, seen from above. */
    public Rect area() {
        return around(recess.map(Recess::diameter).orElse(diameter));
    }

    /** The square around it without its recess. */
    public Rect boreArea() {
        return around(diameter);
    }

    private Rect around(double wide) {
        double r = wide / 2;
        return new Rect(x - r, y - r, x + r, y + r);
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.hole(this);
    }
}
