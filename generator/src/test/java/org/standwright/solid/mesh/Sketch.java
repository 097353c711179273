package org.standwright.solid.mesh;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standwright.solid.mesh.Planes.Plane;

/** Puts faces into a shell by their corners; one place gets one point. */
final class Sketch {
    record Place(int x, int y, int z) {}

    private final Planes planes = new Planes();
    private final Shell shell = new Shell(planes);
    private final Map<Place, Integer> points = new HashMap<>();

    Shell shell() {
        return shell;
    }

    Mesh closed() {
        return shell.closed();
    }

    int point(int x, int y, int z) {
        return points.computeIfAbsent(new Place(x, y, z), place -> shell.point(x, y, z));
    }

    /** Later corners get points of their own, even where there are some. */
    Sketch forgettingPoints() {
        points.clear();
        return this;
    }

    int level(int z, int side) {
        return planes.number(Plane.level(z, side));
    }

    /** A face of corners x, y at a height; seen from above, counter-clockwise when it looks up. */
    void level(int z, int side, int... xy) {
        var corners = new int[xy.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = point(xy[2 * i], xy[2 * i + 1], z);
        }
        face(level(z, side), corners);
    }

    /** An upright face that looks to the right of the way from one point to the other. */
    void wall(int x0, int y0, int x1, int y1, int low, int high) {
        face(
                planes.number(Plane.upright(x0, y0, x1, y1)),
                point(x0, y0, low),
                point(x1, y1, low),
                point(x1, y1, high),
                point(x0, y0, high));
    }

    void face(int plane, int... corners) {
        for (int i = 0; i < corners.length; i++) {
            shell.edge(plane, corners[i], corners[(i + 1) % corners.length]);
        }
    }

    /** Walls on all sides of a ring of corners x, y: round the outside if it runs counter-clockwise. */
    void walls(int low, int high, int... xy) {
        for (int i = 0; i < xy.length; i += 2) {
            int next = (i + 2) % xy.length;
            wall(xy[i], xy[i + 1], xy[next], xy[next + 1], low, high);
        }
    }

    /** What lies between a ring of corners x, y at two heights. */
    void prism(int low, int high, int... xy) {
        walls(low, high, xy);
        level(high, 1, xy);
        level(low, -1, turned(xy));
    }

    void box(int x0, int y0, int z0, int x1, int y1, int z1) {
        prism(z0, z1, x0, y0, x1, y0, x1, y1, x0, y1);
    }

    /** The same ring the other way round. */
    static int[] turned(int... xy) {
        var turned = new int[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            turned[i] = xy[xy.length - 2 - i];
            turned[i + 1] = xy[xy.length - 1 - i];
        }
        return turned;
    }

    /** How many directed edges have not exactly one opposite. */
    static long openEdges(Mesh mesh) {
        var counts = new HashMap<List<Integer>, Integer>();
        var corners = mesh.triangles();
        for (int i = 0; i < corners.length; i++) {
            counts.merge(List.of(corners[i], corners[i % 3 == 2 ? i - 2 : i + 1]), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .filter(entry -> entry.getValue() != 1
                        || !counts.containsKey(
                                List.of(entry.getKey().get(1), entry.getKey().get(0))))
                .count();
    }

    static double volume(Mesh mesh) {
        return mesh.sixfoldVolume() / 6;
    }
}
