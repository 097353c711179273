package org.standwright.viewer.scene;

import java.util.OptionalDouble;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/**
 * What the eye sees through a lens on a picture of a certain size. Points of the picture run right and down from its upper
 * left corner.
 *
 * @param width of the picture, pixels
 * @param height of the picture, pixels
 */
public record Sight(Orbit orbit, Lens lens, double width, double height) {
    public Vec3 eye() {
        return orbit.eye(lens);
    }

    /** From the eye to the target, mm. */
    public double distance() {
        return lens.distance(orbit.span());
    }

    /** How much a pixel covers at the target, mm. */
    public double perPixel() {
        return orbit.span() / height;
    }

    /** Where in the picture a point in front of the eye is. */
    public Vec2 project(Vec3 point) {
        var from = point.minus(eye());
        double scale = distance() / Orbit.dot(orbit.forward(), from) / perPixel();
        return new Vec2(
                width / 2 + scale * Orbit.dot(orbit.right(), from), height / 2 - scale * Orbit.dot(orbit.up(), from));
    }

    /** What a point of the picture shows at the depth of the target. */
    public Vec3 atTarget(double x, double y) {
        return orbit.target()
                .plus(orbit.right().times((x - width / 2) * perPixel()))
                .plus(orbit.up().times((height / 2 - y) * perPixel()));
    }

    /** The direction in which a point of the picture lies from the eye; its length is the way to the target's depth, mm. */
    public Vec3 towards(double x, double y) {
        return atTarget(x, y).minus(eye());
    }

    /**
     * How far away a box is under a point of the picture, as a share of {@link #towards}; empty where it is not, or has the
     * eye in it.
     */
    OptionalDouble hit(Box3 box, double x, double y) {
        var eye = eye();
        var way = towards(x, y);
        var reach = Slab.of(eye.x(), way.x(), box.min().x(), box.max().x())
                .and(Slab.of(eye.y(), way.y(), box.min().y(), box.max().y()))
                .and(Slab.of(eye.z(), way.z(), box.min().z(), box.max().z()));
        return reach.from() > 0 && reach.from() <= reach.to()
                ? OptionalDouble.of(reach.from())
                : OptionalDouble.empty();
    }

    /** The part of a ray between two planes. */
    private record Slab(double from, double to) {
        static Slab of(double start, double way, double low, double high) {
            if (way == 0) { // along the planes: all of it, or nothing
                return start >= low && start <= high
                        ? new Slab(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                        : new Slab(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
            }
            double a = (low - start) / way;
            double b = (high - start) / way;
            return new Slab(Math.min(a, b), Math.max(a, b));
        }

        Slab and(Slab other) {
            return new Slab(Math.max(from, other.from), Math.min(to, other.to));
        }
    }
}
