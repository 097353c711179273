package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * The strips of one row, those that butt taken together.
 *
 * @param runs from the left, mm
 */
record Runs(List<Interval> runs) {
    /** How much of each end of a hanger lies on a strip, mm (common practice, no source). */
    static final double END = 30;

    static Runs of(Row row) {
        return new Runs(Intervals.merged(row.strips().stream().map(Strip::along).toList()));
    }

    /** The longest of them, mm; 0 where there is none. */
    double longest() {
        return runs.stream().mapToDouble(Interval::length).max().orElse(0);
    }

    /**
     * Where the left end of a hanger may be: all of it on one run, or both ends on runs and at least half of its length,
     * with gaps bridged between.
     */
    List<Interval> supports(double hanger) {
        var places = new ArrayList<Interval>();
        for (int i = 0; i < runs.size(); i++) {
            var first = runs.get(i);
            if (!Grid.less(first.length(), hanger)) {
                places.add(new Interval(first.from(), Math.max(first.from(), first.to() - hanger)));
            }
            bridges(i, hanger, places);
        }
        return Intervals.merged(places);
    }

    /** What lies on strips between two given runs is the same wherever the hanger's ends are on them. */
    private void bridges(int i, double hanger, List<Interval> places) {
        var first = runs.get(i);
        double between = 0;
        for (int j = i + 1; j < runs.size(); j++) {
            var last = runs.get(j);
            double from = Math.max(first.from(), last.from() + END - hanger);
            double to = Math.min(first.to() - END, last.to() - hanger);
            if (Grid.less(first.to() - END, last.from() + END - hanger)) {
                return;
            }
            double on = hanger - (last.from() - first.to()) + between;
            if (!Grid.less(to, from) && !Grid.less(on, hanger / 2)) {
                places.add(new Interval(from, Math.max(from, to)));
            }
            between += last.length();
        }
    }
}
