package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.dot;

import java.util.Optional;
import org.standwright.geom.Vec3;

/** A straight line from one point to another, which may be the same, mm. */
public record Segment(Vec3 from, Vec3 to) {
    public double length() {
        return Products.length(to.minus(from));
    }

    public Vec3 middle() {
        return from.plus(to).times(0.5);
    }

    Segment reversed() {
        return new Segment(to, from);
    }

    private Vec3 at(double share) {
        return from.plus(to.minus(from).times(share));
    }

    /** From the point of this nearest to {@code other} to that of the other nearest to this. */
    Segment nearest(Segment other) {
        var along = to.minus(from);
        var beside = other.to.minus(other.from);
        var between = from.minus(other.from);
        double a = dot(along, along);
        double e = dot(beside, beside);
        double b = dot(along, beside);
        double c = dot(along, between);
        double f = dot(beside, between);
        double slanted = a * e - b * b;
        double s = slanted > 1e-12 * a * e ? within((b * f - c * e) / slanted) : 0;
        double t = e == 0 ? 0 : within((b * s + f) / e);
        // the other's end may have cut its share short, so that this one's is found anew from it
        s = a == 0 ? 0 : within((b * t - c) / a);
        return new Segment(at(s), other.at(t));
    }

    /** The point of this where it meets the plane of a triangle inside it, if it does. */
    Optional<Vec3> through(Triangle triangle) {
        var normal = triangle.normal();
        double before = dot(normal, from.minus(triangle.a()));
        double behind = dot(normal, to.minus(triangle.a()));
        if (before * behind > 0 || before == behind) {
            return Optional.empty();
        }
        var at = at(before / (before - behind));
        return triangle.covers(at) ? Optional.of(at) : Optional.empty();
    }

    private static double within(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
