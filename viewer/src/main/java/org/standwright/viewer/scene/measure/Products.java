package org.standwright.viewer.scene.measure;

import org.standwright.geom.Vec3;

/** What two vectors make of each other. */
final class Products {
    private Products() {}

    static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }

    static double length(Vec3 v) {
        return Math.sqrt(dot(v, v));
    }

    /** The same direction with length 1, exactly along an axis where {@code v} is. */
    static Vec3 unit(Vec3 v) {
        int axes = (v.x() == 0 ? 0 : 1) + (v.y() == 0 ? 0 : 1) + (v.z() == 0 ? 0 : 1);
        return axes == 1
                ? new Vec3(Math.signum(v.x()), Math.signum(v.y()), Math.signum(v.z())).plus(Vec3.ZERO)
                : v.times(1 / length(v));
    }
}
