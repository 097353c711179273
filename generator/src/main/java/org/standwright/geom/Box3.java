package org.standwright.geom;

import java.util.List;

/** A box along the axes, from its lowest corner to its highest, mm. */
public record Box3(Vec3 min, Vec3 max) {
    public Box3 {
        if (!(max.x() >= min.x() && max.y() >= min.y() && max.z() >= min.z())) {
            throw new IllegalArgumentException("box from " + min + " to " + max + " is turned inside out.");
        }
    }

    /** The box between any two opposite corners. */
    public static Box3 between(Vec3 a, Vec3 b) {
        return new Box3(
                new Vec3(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z())),
                new Vec3(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z())));
    }

    /** The smallest box around all of {@code boxes}, of which there is at least one. */
    public static Box3 around(List<Box3> boxes) {
        return boxes.stream().reduce(Box3::union).orElseThrow();
    }

    public Vec3 size() {
        return max.minus(min);
    }

    public Vec3 centre() {
        return min.plus(max).times(0.5);
    }

    public Box3 union(Box3 other) {
        return new Box3(
                new Vec3(
                        Math.min(min.x(), other.min.x()),
                        Math.min(min.y(), other.min.y()),
                        Math.min(min.z(), other.min.z())),
                new Vec3(
                        Math.max(max.x(), other.max.x()),
                        Math.max(max.y(), other.max.y()),
                        Math.max(max.z(), other.max.z())));
    }

    /** How deep the two boxes reach into each other: the least of the three overlaps, 0 or less when apart. */
    public double overlap(Box3 other) {
        double x = Math.min(max.x(), other.max.x()) - Math.max(min.x(), other.min.x());
        double y = Math.min(max.y(), other.max.y()) - Math.max(min.y(), other.min.y());
        double z = Math.min(max.z(), other.max.z()) - Math.max(min.z(), other.min.z());
        return Math.min(x, Math.min(y, z));
    }
}
