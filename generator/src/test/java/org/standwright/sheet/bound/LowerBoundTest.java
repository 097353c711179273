package org.standwright.sheet.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.plan.Seeds;

class LowerBoundTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(50, 2000);
    }

    @Test
    void roundsTheAreaUp() {
        assertThat(LowerBound.byArea(job(Pack.boards(10, 10).pieces(5, 5, 4)))).isEqualTo(1);
        assertThat(LowerBound.byArea(job(Pack.boards(10, 10).pieces(5, 5, 5)))).isEqualTo(2);
    }

    @Test
    void countsPiecesOfWhichNoTwoShareASheet() {
        var large = Pack.boards(10, 10).pieces(6, 6, 3).pieces(6, 5, 1).pieces(4, 4, 9);

        assertThat(LowerBound.byLargePieces(job(large))).isEqualTo(4);
        assertThat(LowerBound.byArea(job(large))).isEqualTo(3);
    }

    @Test
    void turnsLargePiecesBeforeItCountsThem() {
        var plain = Pack.boards(10, 6).pieces(6, 5, 2);
        var grained = Pack.boards(10, 6).straight().pieces(6, 5, 2);

        assertThat(LowerBound.byLargePieces(job(plain))).isEqualTo(1);
        assertThat(LowerBound.byLargePieces(job(grained))).isEqualTo(2);
    }

    @Test
    void seesByDualFeasibleFunctionsThatOnlyFourPiecesOf34PercentFit() {
        // 2 x 2 on a sheet although the area would do for 8
        var job = job(Pack.boards(100, 100).pieces(34, 34, 9));

        assertThat(LowerBound.byArea(job)).isEqualTo(2);
        assertThat(DualFeasibleBound.of(job)).isEqualTo(3);
    }

    /** The defining property: what fits side by side has values that add up to 1 at most. */
    @ParameterizedTest
    @MethodSource("seeds")
    void valuesOfSizesThatFillASideAddUpToOneAtMost(long seed) {
        var random = new SplittableRandom(seed);
        int side = random.nextInt(20, 5000);
        int[] sizes = partition(side, random);

        for (var function : DualFeasible.family(side, sizes)) {
            double sum = 0;
            for (int size : sizes) {
                sum += function.of(size);
            }
            assertThat(sum).isLessThanOrEqualTo(1 + 1e-12);
        }
    }

    private static int[] partition(int side, SplittableRandom random) {
        var sizes = new ArrayList<Integer>();
        for (int left = side; left > 0; left -= sizes.get(sizes.size() - 1)) {
            sizes.add(random.nextInt(1, Math.max(2, Math.min(left, side * 2 / 3) + 1)));
        }
        return sizes.stream().mapToInt(size -> size).toArray();
    }

    private static PackingJob job(Pack pack) {
        return pack.job();
    }
}
