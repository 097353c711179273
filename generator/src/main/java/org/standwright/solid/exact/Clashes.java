package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.exact.ExactSolid.Edge;
import org.standwright.solid.exact.ExactSolid.Face;

/**
 * Edges of a flat face that run across each other: where polygons keep clear of what is beside them, arcs may not.
 */
final class Clashes {
    private record Path(int edge, boolean bent, Box3 around, List<Vec3> points) {}

    private final List<Vec3> corners;
    private final List<Edge> edges;
    private final Map<Integer, Path> known = new HashMap<>();

    Clashes(List<Vec3> corners, List<Edge> edges) {
        this.corners = corners;
        this.edges = edges;
    }

    /** Tells the numbers of any two edges of a face that cross. */
    void find(Face face, BiConsumer<Integer, Integer> found) {
        if (!(face.surface() instanceof Plane plane)) {
            return;
        }
        var paths = new ArrayList<Path>();
        for (var loop : face.loops()) {
            loop.forEach(use -> paths.add(known.computeIfAbsent(use.edge(), this::path)));
        }
        for (int i = 0; i < paths.size(); i++) {
            for (int j = 0; j < i; j++) {
                var one = paths.get(i);
                var other = paths.get(j);
                if ((one.bent || other.bent) && one.around.overlap(other.around) >= 0 && cross(one, other, plane)) {
                    found.accept(one.edge, other.edge);
                }
            }
        }
    }

    private Path path(int number) {
        var edge = edges.get(number);
        var points = Sampled.of(edge.curve(), corners.get(edge.from()), corners.get(edge.to()));
        var around = points.stream().map(at -> new Box3(at, at)).reduce(Box3::union);
        return new Path(number, points.size() > 2, around.orElseThrow(), points);
    }

    private static boolean cross(Path one, Path other, Plane plane) {
        for (int i = 1; i < one.points.size(); i++) {
            for (int j = 1; j < other.points.size(); j++) {
                var a = one.points.get(i - 1);
                var b = one.points.get(i);
                var c = other.points.get(j - 1);
                var d = other.points.get(j);
                if (parts(plane.normal(), a, b, c, d) && parts(plane.normal(), c, d, a, b)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the line through a and b has c strictly on one side and d on the other. */
    private static boolean parts(Vec3 normal, Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
        var square = normal.cross(b.minus(a)).unit();
        double one = square.dot(c.minus(a));
        double other = square.dot(d.minus(a));
        return Math.abs(one) > Constraint.ON && Math.abs(other) > Constraint.ON && one > 0 != other > 0;
    }
}
