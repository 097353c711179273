package org.standwright;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.standwright.ObjMesh.Vertex;

/** Round upright holes found in a mesh by their walls alone: upright triangles that meet, all corners on one circle. */
final class UprightHoles {
    /** Coordinates lie on a grid of 1/1024 mm. */
    private static final double SNAPPED = 2.0 / 1024;

    private static final int FEWEST_CORNERS = 12;

    private UprightHoles() {}

    record Hole(double x, double y, double diameter, double z0, double z1) {}

    static List<Hole> in(ObjMesh.Part part) {
        var walls = new ArrayList<Set<Vertex>>();
        for (var triangle : part.triangles()) {
            if (isUpright(triangle)) {
                join(walls, triangle);
            }
        }
        return walls.stream().flatMap(wall -> round(wall).stream()).toList();
    }

    private static boolean isUpright(List<Vertex> triangle) {
        var a = triangle.get(0);
        var b = triangle.get(1);
        var c = triangle.get(2);
        return Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x())) < 1e-9;
    }

    /** One wall of all those that the triangle touches. */
    private static void join(List<Set<Vertex>> walls, List<Vertex> triangle) {
        var joined = new LinkedHashSet<>(triangle);
        walls.removeIf(wall -> {
            boolean touches = triangle.stream().anyMatch(wall::contains);
            if (touches) {
                joined.addAll(wall);
            }
            return touches;
        });
        walls.add(joined);
    }

    private static Optional<Hole> round(Set<Vertex> wall) {
        double x = (least(wall, Vertex::x) + most(wall, Vertex::x)) / 2;
        double y = (least(wall, Vertex::y) + most(wall, Vertex::y)) / 2;
        double r0 = least(wall, v -> Math.hypot(v.x() - x, v.y() - y));
        double r1 = most(wall, v -> Math.hypot(v.x() - x, v.y() - y));
        long corners = wall.stream().map(v -> List.of(v.x(), v.y())).distinct().count();
        return r1 - r0 > SNAPPED || corners < FEWEST_CORNERS
                ? Optional.empty()
                : Optional.of(new Hole(x, y, r0 + r1, least(wall, Vertex::z), most(wall, Vertex::z)));
    }

    private static double least(Set<Vertex> wall, ToDoubleFunction<Vertex> size) {
        return wall.stream().mapToDouble(size).min().orElseThrow();
    }

    private static double most(Set<Vertex> wall, ToDoubleFunction<Vertex> size) {
        return wall.stream().mapToDouble(size).max().orElseThrow();
    }
}
