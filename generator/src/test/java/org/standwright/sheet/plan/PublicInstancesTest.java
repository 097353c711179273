package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.BinInstance;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.search.Search;

/** Instances and results that other people published; see the README beside the data. */
class PublicInstancesTest {
    private static final Budget BUDGET = Budget.rounds(12, 0);
    private static final List<BinInstance> INSTANCES = BinInstance.small();

    /**
     * Sums of bins over the ten instances with 20 items, from tables 1 and 2 of T. Gardeyn, T. Wauters, EJOR 2021 (eight
     * threads, 600 s an instance). A valid bound is not above them; a sound first answer is not far above.
     */
    @ParameterizedTest(name = "class {0}: {1} bins with rotation, {2} without")
    @CsvSource({"1, 66, 71", "3, 47, 52", "5, 59, 65", "7, 52, 55", "9, 143, 143"})
    void needsHardlyMoreBinsThanTheBestPublishedResult(int kind, int turning, int fixed) {
        Predicate<BinInstance> chosen = one -> one.kind() == kind && one.items().size() == 20;

        assertThat(bounds(chosen, true)).isLessThanOrEqualTo(turning);
        assertThat(bounds(chosen, false)).isLessThanOrEqualTo(fixed);
        assertThat(bins(chosen, true)).isBetween(turning, turning + 1);
        assertThat(bins(chosen, false)).isBetween(fixed, fixed + 1);
    }

    /** The bounds are those of an own program in another language; a result below one is a mistake of one of them. */
    @ParameterizedTest(name = "{0}: {1} bins at least with rotation, {2} without")
    @CsvFileSource(resources = "/2dbpp/bounds.csv", numLinesToSkip = 1)
    void needsNoFewerBinsThanTheColumnGenerationBound(String name, int turning, int fixed) {
        Predicate<BinInstance> chosen = one -> one.name().equals(name);

        assertThat(bins(chosen, true)).isGreaterThanOrEqualTo(turning);
        assertThat(bins(chosen, false)).isGreaterThanOrEqualTo(fixed);
    }

    /** Five instances of each class, 20 to 100 items. Measured: 529 with rotation, 545 without. The bounds add up to 525 and 539. */
    @Test
    void needsNoMoreBinsThanItDid() {
        Predicate<BinInstance> chosen = one -> one.number() == 1;

        assertThat(bins(chosen, true)).isLessThanOrEqualTo(530);
        assertThat(bins(chosen, false)).isLessThanOrEqualTo(546);
    }

    /** MB_Class_1_1: items of 648 in bins of 100, hence 7 bins at least. */
    @Test
    void needsSevenBinsForTheFirstInstance() {
        var first = INSTANCES.get(0);

        assertThat(first.job(true, 0, 1).pieceArea()).isEqualTo(648);
        assertThat(LowerBound.of(first.job(true, 0, 1))).isGreaterThanOrEqualTo(7);
    }

    /**
     * cgcut1 of Christofides, Whitlock 1977 (ESICUP collection, CC0): no guillotine pattern of the 15 x 10 sheet is worth
     * more than 244, or 260 with rotation (own exhaustive search; the first figure is also the literature's).
     */
    @ParameterizedTest
    @CsvSource({"true, 244", "false, 260"})
    void fillsNoSheetBeyondTheBestPattern(boolean grain, int best) {
        var value = Map.of("A", 66, "B", 35, "C", 24, "D", 17, "E", 11, "F", 8, "G", 2);
        var job = grain ? SheetJob.sheet(15, 10).grain() : SheetJob.sheet(15, 10);
        job = job.pieces("A", 8, 4, 2)
                .pieces("B", 3, 7, 1)
                .pieces("C", 8, 2, 3)
                .pieces("D", 3, 4, 5)
                .pieces("E", 3, 3, 2)
                .pieces("F", 3, 2, 2)
                .pieces("G", 2, 1, 1);

        assertThat(job.plan().sheets())
                .allSatisfy(sheet -> assertThat(sheet.pieces().stream()
                                .mapToInt(piece -> value.get(piece.label()))
                                .sum())
                        .isLessThanOrEqualTo(best));
    }

    private static int bins(Predicate<BinInstance> chosen, boolean turning) {
        return chosen(chosen).mapToInt(one -> Bins.FOUND.of(one, turning)).sum();
    }

    private static int bounds(Predicate<BinInstance> chosen, boolean turning) {
        return chosen(chosen)
                .mapToInt(one -> (int) LowerBound.of(one.job(turning, 0, 1)))
                .sum();
    }

    private static Stream<BinInstance> chosen(Predicate<BinInstance> chosen) {
        return INSTANCES.stream().filter(chosen);
    }

    /** Each instance is packed once, whoever asks. */
    private static final class Bins {
        static final Bins FOUND = new Bins();

        private final Map<String, Integer> bins = new HashMap<>();

        int of(BinInstance instance, boolean turning) {
            return bins.computeIfAbsent(instance.name() + turning, name -> {
                var job = instance.job(turning, 0, 1);
                var found = Search.run(job, LowerBound.of(job), BUDGET, better -> {});
                return (int) found.answers().get(0).cost();
            });
        }
    }
}
