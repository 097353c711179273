package org.standwright.design.wall.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Interval;

class RunPlannerTest {
    private static final double LONGEST = 1300;

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    /** Every way to share the studs out, tried one by one, covers no more. */
    @ParameterizedTest
    @MethodSource("seeds")
    void coversAsMuchAsAnyOtherWayToShareTheStudsOut(long seed) {
        var random = new SplittableRandom(seed);
        var studs = new ArrayList<Double>();
        double place = random.nextDouble(0, 200);
        for (int i = 2 + random.nextInt(6); i >= 0; i--) {
            studs.add(place);
            place += random.nextDouble(100, 600);
        }
        var run = new Interval(random.nextDouble(0, 300), place);
        var barred = new TreeSet<Integer>();
        random.ints(random.nextInt(3), 0, studs.size()).forEach(barred::add);

        double covered = new RunPlanner(studs, LONGEST, run, barred, List.of())
                .best().stream().mapToDouble(span -> span.along().length()).sum();

        assertThat(covered).isCloseTo(most(studs, run, barred, 0, -1), within(1e-6));
    }

    @Test
    void stripsOfOneLengthWhereThatCoversAsMuch() {
        var studs = List.of(100.0, 500.0, 900.0, 1300.0, 1700.0, 2100.0);

        assertThat(new RunPlanner(studs, LONGEST, new Interval(0, 2200), Set.of(), List.of()).best())
                .containsExactly(new Span(0, 2, new Interval(0, 1000)), new Span(3, 5, new Interval(1200, 2200)));
    }

    @Test
    void noJointInABarredBay() {
        var studs = List.of(100.0, 500.0, 900.0, 1300.0, 1700.0, 2100.0);

        assertThat(new RunPlanner(studs, LONGEST, new Interval(0, 2200), Set.of(2), List.of(600.0)).best())
                .extracting(Span::first)
                .doesNotContain(3);
    }

    /** The most that strips on the studs from {@code from} on cover, the strip before them ending at {@code before}. */
    private static double most(List<Double> studs, Interval run, Set<Integer> barred, int from, int before) {
        double best = 0;
        for (int first = from; first < studs.size() - 1; first++) {
            boolean open = true;
            for (int bay = before; before >= 0 && bay < first; bay++) {
                open &= !barred.contains(bay);
            }
            for (int last = first + 1; open && last < studs.size(); last++) {
                double length = length(studs, run, first, last);
                if (length > 0) {
                    best = Math.max(best, length + most(studs, run, barred, last + 1, last));
                }
            }
        }
        return best;
    }

    /** 0 where there can be none. */
    private static double length(List<Double> studs, Interval run, int first, int last) {
        double start = studs.get(first);
        double end = studs.get(last);
        double left = Math.min(Math.min(150, (studs.get(first + 1) - start) / 4), start - run.from());
        double right = Math.min(Math.min(150, (end - studs.get(last - 1)) / 4), run.to() - end);
        if (first > 0) {
            left = Math.min(left, (start - studs.get(first - 1)) / 2);
        }
        if (last < studs.size() - 1) {
            right = Math.min(right, (studs.get(last + 1) - end) / 2);
        }
        boolean none = left < 25 || right < 25 || end - start + 50 > LONGEST;
        return none ? 0 : Math.min(LONGEST, end - start + left + right);
    }
}
