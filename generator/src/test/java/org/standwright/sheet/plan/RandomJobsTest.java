package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.Area;
import org.standwright.sheet.SheetUnit;

class RandomJobsTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(25, 200);
    }

    static LongStream fewSeeds() {
        return Seeds.fewOrMany(4, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPieceFallsOutOfTheBoardsWhenTheCutsAreMade(long seed) {
        var job = SheetJob.random(seed, 1 + (int) (seed % 60));
        for (var sheet : job.plan().sheets()) {
            var expected = new ArrayList<Area>();
            sheet.pieces().forEach(piece -> expected.add(piece.area()));
            expected.addAll(sheet.offcuts());
            var remains = new ArrayList<>(FallenApart.of(sheet.board(), sheet));
            remains.removeIf(
                    area -> !expected.contains(area) && Math.min(area.length(), area.width()) < 20 * SheetUnit.PER_MM);
            assertThat(sorted(remains)).isEqualTo(sorted(expected));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cutsEachLineAsOftenAsItSaysAtItsSize(long seed) {
        var job = SheetJob.random(seed, 1 + (int) (seed % 60));
        var wanted = new TreeMap<String, Integer>();
        for (var line : job.lines()) {
            int length = (int) Math.round(line.part().length() * 3200);
            int width = (int) Math.round(line.part().width() * 3200);
            wanted.put(line.label() + " " + length + "x" + width, line.count());
        }

        var cut = new TreeMap<String, Integer>();
        for (var sheet : job.plan().sheets()) {
            for (var piece : sheet.pieces()) {
                int along = piece.area().length();
                int across = piece.area().width();
                var size = piece.turned() ? across + "x" + along : along + "x" + across;
                cut.merge(piece.label() + " " + size, 1, Integer::sum);
            }
        }
        assertThat(cut).isEqualTo(wanted);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverNeedsFewerSheetsThanTheBound(long seed) {
        var plan = SheetJob.random(seed, 1 + (int) (seed % 60)).plan();

        assertThat(plan.proof().least()).isBetween(1L, (long) plan.sheets().size());
        assertThat(plan.yield()).isBetween(0.0, 1.0);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void plansTheSameJobTheSameWayOnEveryThread(long seed) {
        var job = SheetJob.random(seed, 40);
        var first = job.plan();

        var again = LongStream.range(0, 4).parallel().mapToObj(i -> job.plan()).toList();

        assertThat(again).allMatch(first::equals);
    }

    private static List<Area> sorted(List<Area> areas) {
        return areas.stream()
                .sorted(Comparator.comparingInt(Area::x)
                        .thenComparingInt(Area::y)
                        .thenComparingInt(Area::length)
                        .thenComparingInt(Area::width))
                .toList();
    }
}
