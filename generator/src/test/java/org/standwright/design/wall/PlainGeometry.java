package org.standwright.design.wall;

import java.util.List;
import java.util.SplittableRandom;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Vec2;

/** Polygons by ray casting, with no library. */
final class PlainGeometry {
    private static final int ACROSS = 200;
    private static final int UP = 100;
    static final int POINTS = ACROSS * UP;

    private PlainGeometry() {}

    /** Whether a point lies in a polygon: a ray from it to the right meets an odd number of sides. */
    static boolean inside(List<Vec2> corners, double x, double y) {
        boolean inside = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            var a = corners.get(i);
            var b = corners.get(j);
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether all of a rectangle lies in a polygon: its middle does, and no side passes through it. */
    static boolean within(List<Vec2> corners, double[] rect) {
        if (!inside(corners, (rect[0] + rect[2]) / 2, (rect[1] + rect[3]) / 2)) {
            return false;
        }
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            if (passes(corners.get(j), corners.get(i), rect)) {
                return false;
            }
        }
        return true;
    }

    /** Clips the side a b to the rectangle, edge by edge. */
    private static boolean passes(Vec2 a, Vec2 b, double[] rect) {
        double[] start = {a.x(), a.y()};
        double[] way = {b.x() - a.x(), b.y() - a.y()};
        double from = 0;
        double to = 1;
        for (int axis = 0; axis < 2; axis++) {
            if (way[axis] == 0) {
                if (start[axis] <= rect[axis] || start[axis] >= rect[axis + 2]) {
                    return false;
                }
            } else {
                double one = (rect[axis] - start[axis]) / way[axis];
                double other = (rect[axis + 2] - start[axis]) / way[axis];
                from = Math.max(from, Math.min(one, other));
                to = Math.min(to, Math.max(one, other));
            }
        }
        return from < to;
    }

    /** Share of the box around a wall that is bare, by one random point in each of 20,000 cells. */
    static double bareShare(CleatedWall wall, SplittableRandom random) {
        var box = wall.outline().bounds();
        int bare = 0;
        for (int i = 0; i < ACROSS; i++) {
            for (int j = 0; j < UP; j++) {
                double x = box.x0() + box.width() * (i + random.nextDouble()) / ACROSS;
                double y = box.y0() + box.height() * (j + random.nextDouble()) / UP;
                boolean kept = wall.zones().stream()
                        .anyMatch(zone -> x > zone.kept().x0()
                                && x < zone.kept().x1()
                                && y > zone.kept().y0()
                                && y < zone.kept().y1());
                bare += !kept && inside(wall.outline().corners(), x, y) ? 1 : 0;
            }
        }
        return (double) bare / POINTS;
    }
}
