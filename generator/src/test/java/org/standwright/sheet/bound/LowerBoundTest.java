package org.standwright.sheet.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.plan.Seeds;

class LowerBoundTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(50, 2000);
    }

    @Test
    void roundsTheAreaUp() {
        assertThat(LowerBound.of(Pack.boards(10, 10).pieces(5, 5, 4).job())).isEqualTo(1);
        assertThat(LowerBound.of(Pack.boards(10, 10).pieces(5, 5, 5).job())).isEqualTo(2);
    }

    @Test
    void countsPiecesOfWhichNoTwoShareASheet() {
        var large = Pack.boards(10, 10).pieces(6, 6, 3).pieces(6, 5, 1).pieces(4, 4, 9);

        assertThat(LargePieces.of(large.job())).isEqualTo(4);
    }

    @Test
    void turnsLargePiecesBeforeItCountsThem() {
        var plain = Pack.boards(10, 6).pieces(6, 5, 2);
        var grained = Pack.boards(10, 6).straight().pieces(6, 5, 2);

        assertThat(LargePieces.of(plain.job())).isEqualTo(1);
        assertThat(LargePieces.of(grained.job())).isEqualTo(2);
    }

    @Test
    void seesByDualFeasibleFunctionsThatOnlyFourPiecesOf34PercentFit() {
        // 2 x 2 on a sheet although the area would do for 8
        assertThat(DualFeasibleBound.of(Pack.boards(100, 100).pieces(34, 34, 9).job()))
                .isEqualTo(3);
    }

    @Test
    void buysTheSizeThatIsCheaperForWhatItHolds() {
        // 4 pieces a board of 10 x 10 at 30, 2 a board of 10 x 5 at 12
        var job = Pack.boards(10, 10)
                .cost(30)
                .also(10, 5, BoardKind.UNLIMITED, 12)
                .pieces(5, 5, 8)
                .job();

        assertThat(LowerBound.of(job)).isEqualTo(48);
    }

    @Test
    void addsUpWholeBoardsOnly() {
        // area of 5 pieces is that of 1.25 boards: one large and one small, or three small ones
        var job = Pack.boards(10, 10)
                .cost(30)
                .also(10, 5, BoardKind.UNLIMITED, 20)
                .pieces(5, 5, 5)
                .job();

        assertThat(LowerBound.of(job)).isEqualTo(50);
    }

    @Test
    void usesUpOffcutsBeforeItBuys() {
        var pack = Pack.boards(10, 10).pieces(5, 5, 8);

        assertThat(LowerBound.of(pack.also(10, 5, 2, 0).job())).isEqualTo(1);
        assertThat(LowerBound.of(pack.also(10, 5, 1, 0).job())).isEqualTo(2);
        assertThat(LowerBound.of(pack.also(10, 5, 9, 0).job())).isZero();
    }

    @Test
    void cutsNothingLargeFromOffcuts() {
        var job = Pack.boards(10, 10).also(5, 5, 100, 0).pieces(6, 6, 3).job();

        assertThat(LowerBound.of(job)).isEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverAboveTheBestPlan(long seed) {
        var job = TinyJobs.random(seed);

        assertThat(LowerBound.of(job)).isLessThanOrEqualTo(TinyOptimum.cost(job));
    }

    /** The defining property: what fits side by side has values that add up to 1 at most. */
    @ParameterizedTest
    @MethodSource("seeds")
    void valuesOfSizesThatFillASideAddUpToOneAtMost(long seed) {
        var random = new SplittableRandom(seed);
        int side = random.nextInt(20, 5000);
        int[] sizes = partition(side, random);

        var job = new Sizes(
                sizes,
                new int[sizes.length],
                IntStream.generate(() -> 1).limit(sizes.length).toArray());

        for (var function : DualFeasible.family(side, job, 64)) {
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
}
