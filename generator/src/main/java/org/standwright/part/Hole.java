package org.standwright.part;

import java.util.OptionalDouble;
import org.standwright.geom.Require;

/**
 * A round hole bored square to a face.
 *
 * @param face that the drill enters by
 * @param depth from the face, mm, less than the thickness; empty for a hole right through
 * @param purpose what goes in, for the machining notes: 'slide pilot', 'caster bolt'
 */
public record Hole(Face face, double x, double y, double diameter, OptionalDouble depth, String purpose)
        implements Feature {
    public Hole {
        Require.named("purpose of a hole", purpose);
        Require.positive("diameter", diameter, purpose);
        if (depth.isPresent()) {
            Require.positive("depth", depth.getAsDouble(), purpose);
        }
    }

    public static Hole through(double x, double y, double diameter, String purpose) {
        return new Hole(Face.SHOW, x, y, diameter, OptionalDouble.empty(), purpose);
    }

    public static Hole blind(Face face, double x, double y, double diameter, double depth, String purpose) {
        return new Hole(face, x, y, diameter, OptionalDouble.of(depth), purpose);
    }

    /** How far it reaches into a board this thick, mm. */
    public double depthIn(double thickness) {
        return depth.orElse(thickness);
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.hole(this);
    }
}
