package org.standwright.sheet.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BinInstance;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.plan.Seeds;

class ColumnGenerationTest {
    private static final long ALL = 1_000_000_000L;

    static LongStream seeds() {
        return Seeds.fewOrMany(40, 2000);
    }

    @Test
    void provesThatPiecesOfHalfABoardAndMoreDoNotShareOne() {
        var job = Pack.boards(10, 6).straight().pieces(6, 4, 3).pieces(4, 6, 3).job();
        var generation = new ColumnGeneration(job, Long.MAX_VALUE);

        assertThat(generation.improve(ALL, () -> false)).isEqualTo(3);
        assertThat(generation.isDone()).isTrue();
    }

    /** The pinwheel: four pieces fill a board only with cuts that end inside it. */
    @Test
    void knowsThatCutsRunFromEdgeToEdge() {
        var job = Pack.boards(5, 5)
                .straight()
                .pieces(3, 2, 2)
                .pieces(2, 3, 2)
                .pieces(1, 1, 1)
                .job();
        var generation = new ColumnGeneration(job, Long.MAX_VALUE);

        assertThat(LowerBound.of(job)).isEqualTo(1);
        assertThat(generation.improve(ALL, () -> false)).isEqualTo(2);
    }

    @Test
    void stopsAtTheTarget() {
        var job = Pack.boards(100, 100).pieces(34, 34, 90).pieces(40, 20, 17).job();
        var generation = new ColumnGeneration(job, 5);

        assertThat(generation.improve(ALL, () -> false)).isGreaterThanOrEqualTo(5);
        assertThat(generation.isDone()).isTrue();
        assertThat(new ColumnGeneration(job, 0).isDone()).isTrue();
    }

    @Test
    void provesTheSameInSlicesAndAtOnce() {
        var job = Pack.boards(97, 61)
                .pieces(31, 17, 9)
                .pieces(23, 29, 7)
                .pieces(11, 41, 8)
                .job();
        var atOnce = new ColumnGeneration(job, Long.MAX_VALUE);
        var sliced = new ColumnGeneration(job, Long.MAX_VALUE);
        atOnce.improve(ALL, () -> false);
        while (!sliced.isDone()) {
            sliced.improve(1, () -> true);
        }

        assertThat(sliced.bound()).isEqualTo(atOnce.bound());
        assertThat(sliced.patterns()).isEqualTo(atOnce.patterns());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverAboveTheBestPlan(long seed) {
        var job = TinyJobs.random(seed);
        var generation = new ColumnGeneration(job, Long.MAX_VALUE);
        generation.improve(ALL, () -> false);

        assertThat(generation.bound()).isLessThanOrEqualTo(TinyOptimum.cost(job));
        generation.patterns().forEach(tree -> requireCuttable(job, tree.kind(), tree.root()));
    }

    /** Sizes a thousand times as large and a little larger: too many sums for one table, so that grids are used. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverAboveTheBestPlanWhenSizesAreRoundedToAGrid(long seed) {
        var job = finer(TinyJobs.random(seed), new SplittableRandom(seed));
        var generation = new ColumnGeneration(job, Long.MAX_VALUE);
        generation.improve(2_000_000, () -> false);

        assertThat(generation.bound()).isLessThanOrEqualTo(TinyOptimum.cost(job));
        generation.patterns().forEach(tree -> requireCuttable(job, tree.kind(), tree.root()));
    }

    /**
     * Sums of bins over the ten instances with 20 items, from tables 1 and 2 of T. Gardeyn, T. Wauters, EJOR 2021: no
     * valid bound is above them. The bounds expected are those of an own program in another language.
     */
    @ParameterizedTest(name = "class {0}: {1} to {2} bins with rotation, {3} to {4} without")
    @CsvSource({
        "1, 66, 66, 70, 71",
        "3, 47, 47, 49, 52",
        "5, 59, 59, 64, 65",
        "7, 50, 52, 55, 55",
        "9, 143, 143, 143, 143"
    })
    void provesNearlyWhatIsKnown(int kind, int turning, int bestTurning, int fixed, int bestFixed) {
        assertThat(sum(kind, false)).isBetween((long) turning, (long) bestTurning);
        assertThat(sum(kind, true)).isBetween((long) fixed, (long) bestFixed);
    }

    private static long sum(int kind, boolean straight) {
        return BinInstance.small().stream()
                .filter(one -> one.kind() == kind && one.items().size() == 20)
                .map(one -> one.job(!straight, 0, 1))
                .mapToLong(job -> Math.max(
                        LowerBound.of(job), new ColumnGeneration(job, Long.MAX_VALUE).improve(ALL, () -> false)))
                .sum();
    }

    private static PackingJob finer(PackingJob job, SplittableRandom random) {
        var types = job.types().stream()
                .map(type -> new PieceType(
                        type.length() * 1000 - random.nextInt(400),
                        type.width() * 1000 - random.nextInt(400),
                        type.count(),
                        type.ways(),
                        type.mating()))
                .toList();
        var kinds = job.kinds().stream()
                .map(kind -> new BoardKind(
                        kind.length() * 1000, kind.width() * 1000, kind.count(), kind.cost(), kind.mating()))
                .toList();
        return new PackingJob(types, kinds, job.rules());
    }

    private static void requireCuttable(PackingJob job, int kind, CutNode root) {
        var board = job.kinds().get(kind);
        int[] counts = new int[job.types().size()];
        assertThat(root.length()).isEqualTo(board.length());
        assertThat(root.width()).isEqualTo(board.width());
        requireCuttable(job, root, counts);
        for (int type = 0; type < counts.length; type++) {
            var piece = job.types().get(type);
            assertThat(counts[type]).isLessThanOrEqualTo(piece.count());
            assertThat(counts[type] == 0 || piece.fits(board)).isTrue();
        }
    }

    private static void requireCuttable(PackingJob job, CutNode node, int[] counts) {
        if (node instanceof CutNode.Piece piece) {
            var type = job.types().get(piece.type());
            counts[piece.type()]++;
            assertThat(type.allows(piece.turned())).isTrue();
            assertThat(piece.length()).isEqualTo(type.along(piece.turned()));
            assertThat(piece.width()).isEqualTo(type.across(piece.turned()));
        } else if (node instanceof CutNode.Split split) {
            boolean rip = split.direction() == Direction.RIP;
            int sum = 0;
            for (var inner : split.nodes()) {
                sum += rip ? inner.width() : inner.length();
                assertThat(rip ? inner.length() : inner.width()).isEqualTo(rip ? split.length() : split.width());
                requireCuttable(job, inner, counts);
            }
            assertThat(sum).isEqualTo(rip ? split.width() : split.length());
        }
    }
}
