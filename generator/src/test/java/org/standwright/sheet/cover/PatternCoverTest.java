package org.standwright.sheet.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.plan.Seeds;

class PatternCoverTest {
    private static final int ENDLESS = Integer.MAX_VALUE;

    static LongStream seeds() {
        return Seeds.fewOrMany(60, 3000);
    }

    @Test
    void takesWholePatterns() {
        // of three things one each, every pattern has two of them: 1.5 in parts, 2 as wholes
        var patterns = patterns(new int[][] {{1, 1, 0}, {0, 1, 1}, {1, 0, 1}});

        assertThat(PatternCover.cheaper(patterns, new int[] {1, 1, 1}, new int[] {ENDLESS}, 3, 100))
                .hasValueSatisfying(
                        uses -> assertThat(Arrays.stream(uses).sum()).isEqualTo(2));
    }

    @Test
    void reportsNothingThatIsNotCheaper() {
        var patterns = patterns(new int[][] {{1, 1, 0}, {0, 1, 1}, {1, 0, 1}});

        assertThat(PatternCover.cheaper(patterns, new int[] {1, 1, 1}, new int[] {ENDLESS}, 2, 100))
                .isEmpty();
    }

    @Test
    void usesNoMoreBoardsThanThereAre() {
        var patterns = List.of(new Pattern(new int[] {2}, 0, 0), new Pattern(new int[] {3}, 10, 1));

        assertThat(PatternCover.cheaper(patterns, new int[] {7}, new int[] {2, ENDLESS}, 100, 100))
                .hasValueSatisfying(uses -> assertThat(uses).containsExactly(2, 1));
        assertThat(PatternCover.cheaper(patterns, new int[] {7}, new int[] {1, 1}, 100, 100))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findsTheCheapestOfAllChoices(long seed) {
        var random = new SplittableRandom(seed);
        int types = random.nextInt(1, 5);
        int[] needed = random.ints(types, 0, 4).toArray();
        int[] available = {ENDLESS, random.nextInt(0, 3)};
        var patterns = new ArrayList<Pattern>();
        int many = random.nextInt(1, 8);
        for (int j = 0; j < many; j++) {
            patterns.add(new Pattern(random.ints(types, 0, 3).toArray(), random.nextInt(1, 5), random.nextInt(2)));
        }
        long cheapest = cheapest(patterns, 0, needed, available[1]);

        var found = PatternCover.cheaper(patterns, needed, available, cheapest + 1, 100_000);

        assertThat(PatternCover.cheaper(patterns, needed, available, cheapest, 100_000))
                .isEmpty();
        assertThat(found.isPresent()).isEqualTo(cheapest < IMPOSSIBLE);
        found.ifPresent(uses -> {
            long cost = 0;
            int limited = 0;
            int[] lacking = needed.clone();
            for (int j = 0; j < uses.length; j++) {
                cost += uses[j] * patterns.get(j).cost();
                limited += uses[j] * patterns.get(j).kind();
                for (int type = 0; type < types; type++) {
                    lacking[type] -= uses[j] * patterns.get(j).counts()[type];
                }
            }
            assertThat(cost).isEqualTo(cheapest);
            assertThat(limited).isLessThanOrEqualTo(available[1]);
            assertThat(Arrays.stream(lacking)).allMatch(left -> left <= 0);
        });
    }

    private static final long IMPOSSIBLE = 1_000_000;

    /** By trying everything: so many of the pattern from this one on. */
    private static long cheapest(List<Pattern> patterns, int from, int[] needed, int limited) {
        if (Arrays.stream(needed).allMatch(need -> need <= 0)) {
            return 0;
        }
        if (from == patterns.size()) {
            return IMPOSSIBLE;
        }
        var pattern = patterns.get(from);
        long best = cheapest(patterns, from + 1, needed, limited);
        if ((pattern.kind() == 0 || limited > 0)
                && Arrays.stream(pattern.counts()).sum() > 0) {
            int[] left = needed.clone();
            for (int type = 0; type < left.length; type++) {
                left[type] = Math.max(0, left[type] - pattern.counts()[type]);
            }
            if (!Arrays.equals(
                    left, Arrays.stream(needed).map(need -> Math.max(0, need)).toArray())) {
                best = Math.min(best, pattern.cost() + cheapest(patterns, from, left, limited - pattern.kind()));
            }
        }
        return Math.min(best, IMPOSSIBLE);
    }

    private static List<Pattern> patterns(int[][] counts) {
        return Arrays.stream(counts).map(each -> new Pattern(each, 1, 0)).toList();
    }
}
