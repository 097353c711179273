package org.standwright.viewer.scene;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * From where an assembly is seen: an eye on a sphere around a point.
 *
 * @param target the point looked at, assembly frame, mm
 * @param azimuth 0 from the front, 90 from the left, degrees
 * @param elevation 0 from the level of the target, 90 from straight above, degrees
 * @param distance eye to target, mm
 */
record Orbit(Vec3 target, double azimuth, double elevation, double distance) {
    /** Short of straight above, where left and right would change sides. */
    private static final double STEEPEST = 89;

    private static final double NEAREST = 100;
    private static final double FARTHEST = 20_000;
    private static final double MARGIN = 1.04;

    Orbit {
        elevation = Math.max(-STEEPEST, Math.min(STEEPEST, elevation));
        distance = Math.max(NEAREST, Math.min(FARTHEST, distance));
    }

    /** From the front, a little from the right and from above. */
    static Orbit start() {
        return new Orbit(Vec3.ZERO, -32, 20, FARTHEST);
    }

    Orbit turned(double byAzimuth, double byElevation) {
        return new Orbit(target, azimuth + byAzimuth, elevation + byElevation, distance);
    }

    /** Nearer by a factor above 1, farther by one below. */
    Orbit zoomed(double factor) {
        return new Orbit(target, azimuth, elevation, distance / factor);
    }

    /**
     * In the same direction, just so far that the whole box is seen.
     *
     * @param tangent of half the vertical angle of view
     * @param aspect width of the picture over its height
     */
    Orbit fitted(Box3 box, double tangent, double aspect) {
        var centre = box.centre();
        double least = corners(box)
                .map(corner -> corner.minus(centre))
                .mapToDouble(corner -> Math.max(
                                Math.abs(dot(right(), corner)) / (tangent * aspect),
                                Math.abs(dot(up(), corner)) / tangent)
                        - dot(forward(), corner))
                .max()
                .orElseThrow();
        return new Orbit(centre, azimuth, elevation, least * MARGIN);
    }

    /** Where the eye is. */
    Vec3 eye() {
        return target.minus(forward().times(distance));
    }

    private Vec3 forward() {
        return new Vec3(cos(elevation) * sin(azimuth), cos(elevation) * cos(azimuth), -sin(elevation));
    }

    private Vec3 right() {
        return new Vec3(cos(azimuth), -sin(azimuth), 0);
    }

    private Vec3 up() {
        return new Vec3(sin(elevation) * sin(azimuth), sin(elevation) * cos(azimuth), cos(elevation));
    }

    private static Stream<Vec3> corners(Box3 box) {
        return IntStream.range(0, 8)
                .mapToObj(i -> new Vec3(
                        (i & 1) == 0 ? box.min().x() : box.max().x(),
                        (i & 2) == 0 ? box.min().y() : box.max().y(),
                        (i & 4) == 0 ? box.min().z() : box.max().z()));
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }
}
