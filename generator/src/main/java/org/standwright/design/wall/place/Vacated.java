package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.geom.Interval;

/** Places that are free as soon as a hung holder leaves its own. */
record Vacated(Hung by, List<Interval> places) {
    /** Goes from end to end of what all take, and finds where just one is in the way. */
    static final class Sweep {
        private record End(double x, boolean isStart, Hung of) {}

        private static final Comparator<End> IN_ORDER =
                Comparator.comparingDouble(End::x).thenComparing(End::isStart).thenComparingInt(end -> end.of.at());

        private final List<End> ends = new ArrayList<>();

        void add(Hung one, Interval taken) {
            ends.add(new End(taken.from(), true, one));
            ends.add(new End(taken.to(), false, one));
        }

        List<Vacated> within(List<Interval> places) {
            ends.sort(IN_ORDER);
            var vacated = new ArrayList<Vacated>();
            var open = new ArrayList<Hung>();
            double from = Double.NEGATIVE_INFINITY;
            for (var end : ends) {
                if (open.size() == 1 && end.x > from && !open.get(0).holder().isByHand()) {
                    var free = Intervals.common(places, List.of(new Interval(from, end.x)));
                    if (!free.isEmpty()) {
                        vacated.add(new Vacated(open.get(0), free));
                    }
                }
                if (end.isStart) {
                    open.add(end.of);
                } else {
                    open.remove(end.of);
                }
                from = end.x;
            }
            return vacated;
        }
    }
}
