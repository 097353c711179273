package org.standwright.design.wall.place;

import java.util.List;
import java.util.Optional;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Vec2;

/** What something covers of the floor before a wall, seen from above: along the wall, and out from it, mm. */
sealed interface Footprint {
    /** How much of the wall's length it takes from what reaches out so far; empty where it stands farther out. */
    Optional<Interval> shadow(double depth);

    /**
     * A rectangle along the wall.
     *
     * @param near how far out it begins; 0 for what nothing may hang before
     */
    record Oblong(Interval along, double near) implements Footprint {
        @Override
        public Optional<Interval> shadow(double depth) {
            return Grid.less(near, depth) ? Optional.of(along) : Optional.empty();
        }
    }

    /**
     * A convex polygon.
     *
     * @param corners x along the wall, y out from it
     */
    record Convex(List<Vec2> corners) implements Footprint {
        public Convex {
            corners = List.copyOf(corners);
        }

        /** The ends of what lies between wall and depth are ends of sides, cut off there. */
        @Override
        public Optional<Interval> shadow(double depth) {
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            double nearest = Double.POSITIVE_INFINITY;
            double farthest = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < corners.size(); i++) {
                var a = corners.get(i);
                var b = corners.get((i + 1) % corners.size());
                nearest = Math.min(nearest, a.y());
                farthest = Math.max(farthest, a.y());
                if (Math.min(a.y(), b.y()) > depth || Math.max(a.y(), b.y()) < 0) {
                    continue;
                }
                double start = at(a, b, Math.max(0, Math.min(depth, a.y())));
                double end = at(b, a, Math.max(0, Math.min(depth, b.y())));
                from = Math.min(from, Math.min(start, end));
                to = Math.max(to, Math.max(start, end));
            }
            boolean meets = Grid.less(nearest, depth) && Grid.less(0, farthest) && Grid.less(from, to);
            return meets ? Optional.of(new Interval(from, to)) : Optional.empty();
        }

        /** Along the wall, where the side from a to b is so far out. */
        private static double at(Vec2 a, Vec2 b, double out) {
            return a.y() == out ? a.x() : a.x() + (b.x() - a.x()) * (out - a.y()) / (b.y() - a.y());
        }
    }
}
