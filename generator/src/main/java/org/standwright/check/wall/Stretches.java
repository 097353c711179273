package org.standwright.check.wall;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.standwright.check.wall.statics.StudShares;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * Stretches of a strip, each as wide as the next and each with as much on it: one of them, several side by side, or all.
 *
 * @param width of each, mm
 */
record Stretches(List<Double> studs, Interval along, double width) {
    /** Places looked at within one width, besides those that begin, end or have their middle at a stud. */
    private static final int STEPS = 16;
    /** Side by side; more of them load no stud more, all of them perhaps do. */
    private static final int SEVERAL = 3;

    /** What the most loaded stud gets, for each N on one stretch, at the worst place. */
    double most() {
        return IntStream.rangeClosed(1, SEVERAL)
                .mapToDouble(count -> Math.min(count * width, along.length()))
                .map(this::most)
                .reduce(most(along.length()), Math::max);
    }

    private double most(double wide) {
        double times = Math.max(1, wide / width);
        return begins(wide)
                .map(from -> times * new StudShares(studs, from, from + wide).most())
                .max()
                .orElseThrow();
    }

    private DoubleStream begins(double wide) {
        double last = along.to() - wide;
        int steps = (int) Math.ceil((last - along.from()) / width * STEPS);
        var evenly = IntStream.rangeClosed(0, steps)
                .mapToDouble(step -> steps == 0 ? last : along.from() + (last - along.from()) * step / steps);
        var atStuds = studs.stream()
                .flatMapToDouble(stud -> DoubleStream.of(stud, stud - wide / 2, stud - wide))
                .filter(from -> !Grid.less(from, along.from()) && !Grid.less(last, from));
        return DoubleStream.concat(evenly, atStuds);
    }
}
