package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/** Sets of places as lists of intervals, in order and apart; a single place is an interval without length. */
final class Intervals {
    private static final Comparator<Interval> BY_START =
            Comparator.comparingDouble(Interval::from).thenComparingDouble(Interval::to);

    private Intervals() {}

    /** Those that overlap or touch, made one. */
    static List<Interval> merged(List<Interval> any) {
        var ordered = new ArrayList<>(any);
        ordered.sort(BY_START);
        var merged = new ArrayList<Interval>(ordered.size());
        for (var next : ordered) {
            int last = merged.size() - 1;
            if (last >= 0 && !Grid.less(merged.get(last).to(), next.from())) {
                var before = merged.get(last);
                merged.set(last, new Interval(before.from(), Math.max(before.to(), next.to())));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    /** What two sets share. */
    static List<Interval> common(List<Interval> some, List<Interval> others) {
        var common = new ArrayList<Interval>();
        int i = 0;
        int j = 0;
        while (i < some.size() && j < others.size()) {
            var a = some.get(i);
            var b = others.get(j);
            double from = Math.max(a.from(), b.from());
            add(from, Math.min(a.to(), b.to()), common);
            if (a.to() < b.to()) {
                i++;
            } else {
                j++;
            }
        }
        return common;
    }

    /** A set without what lies inside any of {@code taken}, whose ends stay. */
    static List<Interval> without(List<Interval> set, List<Interval> taken) {
        taken.sort(BY_START);
        var left = new ArrayList<Interval>();
        int first = 0;
        double reached = Double.NEGATIVE_INFINITY;
        for (var whole : set) {
            double from = Math.max(whole.from(), reached);
            while (first < taken.size() && taken.get(first).from() <= whole.to()) {
                add(from, taken.get(first).from(), left);
                reached = Math.max(reached, taken.get(first).to());
                from = Math.max(from, reached);
                first++;
            }
            add(from, whole.to(), left);
        }
        return left;
    }

    private static void add(double from, double to, List<Interval> set) {
        if (!Grid.less(to, from)) {
            set.add(new Interval(from, Math.max(from, to)));
        }
    }
}
