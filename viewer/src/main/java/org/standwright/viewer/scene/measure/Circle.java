package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.cross;
import static org.standwright.viewer.scene.measure.Products.dot;
import static org.standwright.viewer.scene.measure.Products.length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * Whether flat patches around an axis make a full circle, and which.
 *
 * <p>Solids follow a circle by a regular polygon of the same area ({@link org.standwright.solid.Fineness}), so that of n
 * sides with corners at R stands for the radius r with n R² sin(2π/n) / 2 = π r².
 */
final class Circle {
    /** How far corners may lie off the circle, which the grid rounds, mm. */
    private static final double ROUNDING = 3.0 / Solid.PER_MM;

    /** No circle is followed by fewer sides than this, less one. */
    private static final double WIDEST_GAP = StrictMath.toRadians(31);

    private final Vec3 axis;
    private final Vec3 u;
    private final Vec3 v;
    private final FlatPatch side;
    private final List<Triangle> triangles;

    Circle(Vec3 axis, List<FlatPatch> sides, Solid solid) {
        this.axis = forwards(axis);
        this.side = sides.stream()
                .min(Comparator.comparing(patch -> patch.numbers().get(0)))
                .orElseThrow();
        this.u = side.normal();
        this.v = cross(this.axis, u);
        this.triangles = RoundWall.triangles(sides, solid);
    }

    /** The one of two opposite directions that does not depend on which side was picked. */
    private static Vec3 forwards(Vec3 axis) {
        double x = Math.abs(axis.x());
        double y = Math.abs(axis.y());
        double z = Math.abs(axis.z());
        double leading = z >= x && z >= y ? axis.z() : y >= x ? axis.y() : axis.x();
        return leading < 0 ? axis.times(-1).plus(Vec3.ZERO) : axis; // 0, never -0
    }

    Optional<RoundFace> face() {
        var corners = corners().toList();
        var centre = centre(corners);
        double reach = corners.stream()
                .mapToDouble(corner -> length(across(corner.minus(centre))))
                .average()
                .orElseThrow();
        boolean round =
                corners.stream().allMatch(corner -> Math.abs(length(across(corner.minus(centre))) - reach) <= ROUNDING);
        var angles = angles(corners, centre);
        return round && goesAround(angles) ? Optional.of(face(centre, radius(reach, angles.size()))) : Optional.empty();
    }

    private RoundFace face(Vec3 centre, double radius) {
        double low = corners().mapToDouble(this::along).min().orElseThrow();
        double high = corners().mapToDouble(this::along).max().orElseThrow();
        boolean inwards = dot(side.normal(), centre) > side.at();
        return new RoundFace(
                inwards ? RoundFace.Kind.HOLE : RoundFace.Kind.POST,
                centre.plus(axis.times(low)),
                centre.plus(axis.times(high)),
                2 * radius,
                triangles);
    }

    private Stream<Vec3> corners() {
        return triangles.stream().flatMap(triangle -> Stream.of(triangle.a(), triangle.b(), triangle.c()));
    }

    /** The middle of the box around all corners, in the plane square to the axis through the origin. */
    private Vec3 centre(List<Vec3> corners) {
        return u.times(middle(corners, u)).plus(v.times(middle(corners, v)));
    }

    private static double middle(List<Vec3> corners, Vec3 direction) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (var corner : corners) {
            double place = dot(corner, direction);
            low = Math.min(low, place);
            high = Math.max(high, place);
        }
        return (low + high) / 2;
    }

    /** Directions from the centre in which corners lie, every one once, in rising order, radians. */
    private List<Double> angles(List<Vec3> corners, Vec3 centre) {
        var rising = corners.stream()
                .map(corner -> corner.minus(centre))
                .map(arm -> StrictMath.atan2(dot(arm, v), dot(arm, u)))
                .sorted()
                .toList();
        var different = new ArrayList<Double>();
        for (double angle : rising) {
            if (different.isEmpty() || angle - different.get(different.size() - 1) > WIDEST_GAP / 1000) {
                different.add(angle);
            }
        }
        int last = different.size() - 1;
        if (different.get(0) + 2 * Math.PI - different.get(last) <= WIDEST_GAP / 1000) {
            different.remove(last); // the same direction, half a turn to the left and to the right
        }
        return different;
    }

    private static boolean goesAround(List<Double> angles) {
        double last = angles.get(angles.size() - 1) - 2 * Math.PI;
        for (double angle : angles) {
            if (angle - last > WIDEST_GAP) {
                return false;
            }
            last = angle;
        }
        return true;
    }

    private static double radius(double reach, int corners) {
        double step = 2 * Math.PI / corners;
        return reach * Math.sqrt(StrictMath.sin(step) / step);
    }

    private double along(Vec3 corner) {
        return dot(corner, axis);
    }

    private Vec3 across(Vec3 arm) {
        return arm.minus(axis.times(dot(arm, axis)));
    }
}
