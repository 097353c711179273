package org.standwright.sheet.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.plan.Seeds;

class SearchTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(60, 1000);
    }

    static LongStream fewSeeds() {
        return Seeds.fewOrMany(8, 100).filter(seed -> canBeCut(RandomPack.of(seed)));
    }

    static LongStream severalKinds() {
        return Seeds.fewOrMany(40, 400)
                .filter(seed -> RandomPack.of(seed).kinds().size() > 1 && canBeCut(RandomPack.of(seed)))
                .limit(Seeds.fewOrMany(4, 60).count());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyAnswerCanBeCutAndCostsNoLessThanTheBounds(long seed) {
        var job = RandomPack.of(seed);
        Found found;
        try {
            found = search(job, Budget.rounds(3, 1));
        } catch (ScarceStockException e) {
            // a piece that no whole board can be begun with may still come from a smaller rest, or from none
            assertThat(canBeCut(job)).isFalse();
            return;
        }

        assertThat(found.bound()).isGreaterThanOrEqualTo(LowerBound.of(job));
        assertThat(found.answers()).hasSize(4).allSatisfy(answer -> {
            assertThat(TreeCheck.faults(job, answer.boards())).isEmpty();
            assertThat(answer.cost()).isEqualTo(cost(job, answer)).isGreaterThanOrEqualTo(found.bound());
        });
    }

    @ParameterizedTest
    @MethodSource("severalKinds")
    void answersAlikeOnOneThreadTwoAndEight(long seed) {
        var job = RandomPack.of(seed);
        var one = onThreads(1, job);

        assertThat(onThreads(2, job)).isEqualTo(one);
        assertThat(onThreads(8, job)).isEqualTo(one);
    }

    @Test
    void answersAlikeOnAnyNumberOfThreadsWhereBoardsAreChosenAnew() {
        var job = Pack.boards(100, 70)
                .pieces(61, 23, 5)
                .pieces(48, 31, 6)
                .pieces(37, 29, 9)
                .pieces(19, 53, 4)
                .pieces(26, 17, 7)
                .job();
        var budget = Budget.rounds(41, 1);
        var one = onThreads(1, job, budget);

        assertThat(onThreads(2, job, budget)).isEqualTo(one);
        assertThat(onThreads(8, job, budget)).isEqualTo(one);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void neverCostsMoreWithMoreRounds(long seed) {
        var job = RandomPack.of(seed);
        long cost = Long.MAX_VALUE;
        for (int rounds : new int[] {0, 1, 2, 5, 12, 30}) {
            var found = search(job, Budget.rounds(rounds, 1));
            long now = found.answers().stream().mapToLong(Packing::cost).min().orElseThrow();

            assertThat(now).as("cost after %d rounds", rounds).isLessThanOrEqualTo(cost);
            cost = now;
        }
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void tellsOfEachBetterAnswerFromTheFirstOn(long seed) {
        var job = RandomPack.of(seed);
        var told = new ArrayList<Packing>();
        var found = Search.run(job, LowerBound.of(job), Budget.rounds(12, 0), told::add);

        assertThat(told)
                .isNotEmpty()
                .allSatisfy(answer ->
                        assertThat(TreeCheck.faults(job, answer.boards())).isEmpty());
        assertThat(told).extracting(Packing::cost).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(found.answers())
                .allSatisfy(answer -> assertThat(answer.cost())
                        .isEqualTo(told.get(told.size() - 1).cost()));
    }

    @Test
    void comesBackWithTheFirstAnswerWhenTimeIsOver() {
        var job = Pack.boards(10, 10).pieces(6, 6, 3).pieces(5, 4, 7).job();
        var found = Search.run(job, 0, new Budget(2, 100, 0, 1, () -> true), better -> {});

        assertThat(found.answers())
                .hasSize(2)
                .allSatisfy(answer ->
                        assertThat(TreeCheck.faults(job, answer.boards())).isEmpty());
        assertThat(found.bound()).isZero();
    }

    @Test
    void doesNotSearchWhereTheFirstAnswerMeetsTheBound() {
        var job = Pack.boards(10, 10).pieces(10, 5, 2).job();
        var found = Search.run(job, 1, new Budget(4, 100, 0, 1, SearchTest::mustNotBeAsked), better -> {});

        assertThat(found.answers()).extracting(Packing::cost).containsOnly(1L);
    }

    private static boolean mustNotBeAsked() {
        throw new AssertionError("a round more than it takes");
    }

    /** 3 x 36 of 100 cells: the boards have the area, yet each holds one piece only. */
    @Test
    void saysWhatAreaFindsNoPlaceOnTheBoardsInStock() {
        var job = limited(2, Pack.boards(10, 10).pieces(6, 6, 3).pieces(10, 4, 1));

        assertThatThrownBy(() -> search(job, Budget.rounds(3, 1)))
                .isInstanceOfSatisfying(
                        ScarceStockException.class,
                        scarce -> assertThat(scarce.missingArea()).isEqualTo(36))
                .hasMessage("the boards in stock do not suffice for all pieces.");
    }

    /** The first answer, large pieces first, needs a third board; there are two. */
    @Test
    void laysAllPiecesOnScarceBoardsWhereThereIsAWay() {
        var job = limited(
                2,
                Pack.boards(10, 10)
                        .pieces(10, 6, 1)
                        .pieces(5, 4, 2)
                        .pieces(10, 3, 2)
                        .pieces(4, 10, 1));
        var found = search(job, Budget.rounds(20, 0));

        assertThat(found.answers().get(0).boards()).hasSize(2);
        assertThat(TreeCheck.faults(job, found.answers().get(0).boards())).isEmpty();
    }

    @Test
    void prefersWhatIsAtHandAndWhatIsCheap() {
        var atHand =
                Pack.boards(20, 20).cost(9).also(10, 10, 1, 0).pieces(9, 9, 1).job();
        var cheap = Pack.boards(20, 10)
                .cost(9)
                .also(10, 10, BoardKind.UNLIMITED, 4)
                .pieces(10, 10, 2)
                .job();

        assertThat(search(atHand, Budget.rounds(2, 0)).answers().get(0).cost()).isZero();
        assertThat(search(cheap, Budget.rounds(2, 0)).answers().get(0).cost()).isEqualTo(8);
    }

    /** Four pieces fill half of a board: laid in one row they leave the other half in one piece. */
    @Test
    void clearsTheLargestOffcutThatThereIs() {
        var job = Pack.boards(40, 20).pieces(10, 10, 4).job();

        assertThat(largestOffcut(job, search(job, Budget.rounds(1, 4)))).isEqualTo(400);
    }

    /** Whether there is a board without end for each piece; the saw may reach no cut that frees it. */
    private static boolean canBeCut(PackingJob job) {
        var terms = new Terms(job);
        return IntStream.range(0, terms.types())
                .allMatch(type -> IntStream.range(0, job.kinds().size())
                        .filter(kind -> job.kinds().get(kind).count() == BoardKind.UNLIMITED)
                        .anyMatch(kind -> terms.starts(type, kind)));
    }

    private static PackingJob limited(int boards, Pack pack) {
        var job = pack.job();
        var kind = job.kinds().get(0);
        var few = new BoardKind(kind.length(), kind.width(), boards, kind.cost(), true);
        return new PackingJob(job.types(), List.of(few), CutRules.free(0));
    }

    private static Found search(PackingJob job, Budget budget) {
        return Search.run(job, LowerBound.of(job), budget, better -> {});
    }

    private static Found onThreads(int threads, PackingJob job) {
        return onThreads(threads, job, Budget.rounds(4, 1));
    }

    private static Found onThreads(int threads, PackingJob job, Budget budget) {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> search(job, budget)).join();
        } finally {
            pool.shutdown();
        }
    }

    private static long cost(PackingJob job, Packing answer) {
        return answer.boards().stream()
                .mapToLong(board -> job.kinds().get(board.kind()).cost())
                .sum();
    }

    private static long largestOffcut(PackingJob job, Found found) {
        return found.answers().stream()
                .flatMap(answer -> answer.boards().stream())
                .mapToLong(board -> largestRest(board.root(), job.rules().kerf()))
                .max()
                .orElse(0);
    }

    private static long largestRest(CutNode node, int kerf) {
        if (node instanceof CutNode.Rest rest) {
            return (long) Math.max(0, rest.length() - kerf) * Math.max(0, rest.width() - kerf);
        }
        return node instanceof CutNode.Split split
                ? split.nodes().stream()
                        .mapToLong(inner -> largestRest(inner, kerf))
                        .max()
                        .orElse(0)
                : 0;
    }
}
