package org.standwright.router.plan.places;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.plan.Seeds;

class PlaceSearchTest {
    private static final int SIDE = 7;

    static LongStream seeds() {
        return Seeds.fewOrMany(40, 1000);
    }

    /** Five rectangles that fill a square and that no cut from edge to edge parts. */
    @Test
    void fillsAPinwheelToTheLastSquare() {
        var job = Pack.boards(5, 5).pieces(3, 2, 4).pieces(1, 1, 1).job();

        assertThat(run(job).cost()).isEqualTo(1);
    }

    /** It lays pieces into corners of free rectangles only, so that now and then it misses what only another order gives. */
    @Test
    void needsAsFewBoardsAsAnExhaustiveSearchInAllButOneJobOf500() {
        var seeds = seeds().toArray();
        long more = 0;
        for (long seed : seeds) {
            var random = new SplittableRandom(seed);
            var pack = Pack.boards(SIDE, SIDE);
            pack = random.nextBoolean() ? pack : pack.straight();
            int pieces = random.nextInt(4, 8);
            var sides = new ArrayList<int[]>();
            for (int i = 0; i < pieces; i++) {
                int length = random.nextInt(1, 6);
                int width = random.nextInt(1, 6);
                pack = pack.pieces(length, width, 1);
                sides.add(new int[] {length, width});
            }
            var job = pack.job();
            long least = new Exhaustive(SIDE, isTurning(job)).boards(sides);

            assertThat(run(job).cost()).as("seed %d", seed).isBetween(least, least + 1);
            more += run(job).cost() > least ? 1 : 0;
        }
        assertThat(more).isLessThanOrEqualTo(seeds.length / 500);
    }

    @Test
    void saysWhatFindsNoPlaceOnTheBoardsThereAre() {
        var job = new Pack(
                        List.of(),
                        List.of(),
                        Pack.boards(5, 5).rules(),
                        Pack.boards(5, 5).ways())
                .also(5, 5, 1, 1)
                .pieces(3, 3, 2)
                .job();

        assertThatThrownBy(() -> run(job))
                .isInstanceOfSatisfying(
                        ScarceStockException.class,
                        e -> assertThat(e.missingArea()).isEqualTo(9));
    }

    @Test
    void usesWhatIsAtHandBeforeItBuys() {
        var job = Pack.boards(9, 9).also(5, 5, 1, 0).pieces(5, 4, 1).job();

        assertThat(run(job).cost()).isZero();
    }

    private static boolean isTurning(PackingJob job) {
        return job.types().stream().anyMatch(type -> type.allows(true));
    }

    private static Filling run(PackingJob job) {
        return PlaceSearch.run(job, List.of(), LowerBound.of(job), Budget.rounds(12, 1));
    }
}
