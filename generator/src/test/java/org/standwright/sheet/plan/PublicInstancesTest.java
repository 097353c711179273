package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Instances and results that other people published; see the README beside the data. */
class PublicInstancesTest {
    /**
     * Sums of bins over the ten instances with 20 items, from tables 1 and 2 of T. Gardeyn, T. Wauters, EJOR 2021 (eight
     * threads, 600 s an instance). A valid bound is not above them; a sound first answer is not far above.
     */
    @ParameterizedTest(name = "class {0}: {1} bins with rotation, {2} without")
    @CsvSource({"1, 66, 71", "3, 47, 52", "5, 59, 65", "7, 52, 55", "9, 143, 143"})
    void needsHardlyMoreBinsThanTheBestPublishedResult(int kind, int turning, int fixed) throws IOException {
        var plain = instances(kind);
        var grained = plain.stream().map(PublicInstancesTest::withGrain).toList();

        assertThat(bounds(plain)).isLessThanOrEqualTo(turning);
        assertThat(bounds(grained)).isLessThanOrEqualTo(fixed);
        assertThat(bins(plain)).isBetween(turning, turning + 2);
        assertThat(bins(grained)).isBetween(fixed, fixed + 2);
    }

    /** MB_Class_1_1: items of 648 in bins of 100, hence 7 bins at least. */
    @Test
    void needsSevenBinsForTheFirstInstance() throws IOException {
        var first = instances(1).get(0);
        assertThat(first.cutList().lines().stream()
                        .mapToDouble(
                                line -> line.part().cutLength() * line.part().cutWidth() * line.count())
                        .sum())
                .isEqualTo(648);
        assertThat(first.plan().proof().least()).isGreaterThanOrEqualTo(7);
        assertThat(first.plan().sheets()).hasSizeGreaterThanOrEqualTo(7);
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

    private static int bins(List<SheetJob> jobs) {
        return jobs.stream().mapToInt(job -> job.plan().sheets().size()).sum();
    }

    private static int bounds(List<SheetJob> jobs) {
        return jobs.stream().mapToInt(job -> (int) job.plan().proof().least()).sum();
    }

    private static SheetJob withGrain(SheetJob plain) {
        var job = SheetJob.sheet(plain.sheet().length(), plain.sheet().width()).grain();
        for (var line : plain.lines()) {
            job = job.pieces(line.label(), line.part().length(), line.part().width(), 1);
        }
        return job;
    }

    private static List<SheetJob> instances(int kind) throws IOException {
        try (var text = PublicInstancesTest.class.getResourceAsStream("/2dbpp/n20.txt");
                var lines = new BufferedReader(new InputStreamReader(text, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> line.startsWith(kind + " "))
                    .map(PublicInstancesTest::instance)
                    .toList();
        }
    }

    private static SheetJob instance(String line) {
        var words = line.split(" ");
        var job = SheetJob.sheet(side(words[2], 0), side(words[2], 1));
        for (int i = 3; i < words.length; i++) {
            job = job.pieces("P" + (i - 2), side(words[i], 0), side(words[i], 1), 1);
        }
        return job;
    }

    private static int side(String size, int index) {
        return Integer.parseInt(size.split("x")[index]);
    }
}
