package org.standwright.viewer.scene;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * From where an assembly is seen: an eye on a sphere around a point. Which lens it has is told apart, so that changing
 * it leaves the size of what is looked at.
 *
 * @param target the point looked at, assembly frame, mm
 * @param azimuth 0 from the front, 90 from the left, degrees
 * @param elevation 0 from the level of the target, 90 from straight above, degrees
 * @param span height that just fills the picture at the target, mm
 */
public record Orbit(Vec3 target, double azimuth, double elevation, double span) {
    private static final double STEEPEST = 90;
    private static final double CLOSEST = 10;
    private static final double WIDEST = 60_000;
    private static final double MARGIN = 1.04;

    public Orbit {
        elevation = clamped(elevation, -STEEPEST, STEEPEST);
        span = clamped(span, CLOSEST, WIDEST);
    }

    /** From the front, a little from the right and from above. */
    public static Orbit start() {
        return new Orbit(Vec3.ZERO, 0, 0, 2000).seenFrom(StandardView.THREE_QUARTER);
    }

    public Orbit turned(double byAzimuth, double byElevation) {
        return new Orbit(target, azimuth + byAzimuth, elevation + byElevation, span);
    }

    public Orbit seenFrom(StandardView view) {
        return new Orbit(target, view.azimuth(), view.elevation(), span);
    }

    /** Nearer by a factor above 1, farther by one below; {@code fixed} stays where it is in the picture. */
    public Orbit zoomed(double factor, Vec3 fixed) {
        double rest = clamped(span / factor, CLOSEST, WIDEST) / span; // a scaling about the point, which no ray notices
        return new Orbit(fixed.plus(target.minus(fixed).times(rest)), azimuth, elevation, span * rest);
    }

    /** Moved sideways, mm to the right and upwards as seen. */
    public Orbit moved(double right, double up) {
        return new Orbit(target.plus(right().times(right)).plus(up().times(up)), azimuth, elevation, span);
    }

    /**
     * In the same direction, just so far that the whole box is seen.
     *
     * @param aspect width of the picture over its height
     */
    public Orbit fitted(Box3 box, Lens lens, double aspect) {
        var centre = box.centre();
        double tangent = lens.tangent();
        double least = corners(box)
                .map(corner -> corner.minus(centre))
                .mapToDouble(corner -> Math.max(
                                Math.abs(dot(right(), corner)) / (tangent * aspect),
                                Math.abs(dot(up(), corner)) / tangent)
                        - dot(forward(), corner))
                .max()
                .orElseThrow();
        return new Orbit(centre, azimuth, elevation, 2 * tangent * least * MARGIN);
    }

    /** Where the eye is. */
    Vec3 eye(Lens lens) {
        return target.minus(forward().times(lens.distance(span)));
    }

    Vec3 forward() {
        return new Vec3(cos(elevation) * sin(azimuth), cos(elevation) * cos(azimuth), -sin(elevation));
    }

    Vec3 right() {
        return new Vec3(cos(azimuth), -sin(azimuth), 0);
    }

    Vec3 up() {
        return new Vec3(sin(elevation) * sin(azimuth), sin(elevation) * cos(azimuth), cos(elevation));
    }

    static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Stream<Vec3> corners(Box3 box) {
        return IntStream.range(0, 8)
                .mapToObj(i -> new Vec3(
                        (i & 1) == 0 ? box.min().x() : box.max().x(),
                        (i & 2) == 0 ? box.min().y() : box.max().y(),
                        (i & 4) == 0 ? box.min().z() : box.max().z()));
    }

    private static double clamped(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }
}
