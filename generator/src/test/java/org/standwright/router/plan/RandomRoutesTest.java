package org.standwright.router.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Router;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.RandomShop;
import org.standwright.sheet.plan.Seeds;
import org.standwright.sheet.plan.SheetJob;

class RandomRoutesTest {
    private static final Effort SHORT = new Effort(4, 2, 0, true);

    static LongStream seeds() {
        return Seeds.fewOrMany(5, 200);
    }

    static LongStream shops() {
        return Seeds.fewOrMany(25, 2000);
    }

    static LongStream fewSeeds() {
        return Seeds.fewOrMany(1, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void takesNoMoreBoardsThanASawAsWideAsTheSpacing(long seed) {
        var job = SheetJob.random(seed, 1 + (int) (7 * seed % 60));
        var router = router(seed);
        var plan = Routes.plan(job.stock(), job.cutList(), router);
        var sawn = Routes.sawn(job.stock(), job.cutList(), router, Effort.USUAL);

        assertThat(Routes.faults(job.stock(), job.cutList(), router, plan)).isEmpty();
        assertThat(Routes.boards(plan))
                .isLessThanOrEqualTo(sawn.materials().get(0).sheets().size());
    }

    /** Boards of several sizes and thicknesses, offcuts, strips, pieces of one sheet, free grain. */
    @ParameterizedTest
    @MethodSource("shops")
    void costsNoMoreThanASawAsWideAsTheSpacingInAnyShop(long seed) {
        var shop = RandomShop.of(seed);
        var cutList = withoutBlanks(shop.cutList());
        var router = router(seed);
        var plan = unlessRefused(() -> RouterPlanner.plan(shop.stock(), cutList, router, Effort.QUICK, () -> false));
        var sawn = unlessRefused(() -> Routes.sawn(shop.stock(), cutList, router, Effort.QUICK));

        plan.ifPresent(routed ->
                assertThat(Routes.faults(shop.stock(), cutList, router, routed)).isEmpty());
        sawn.map(saws -> saws.materials().get(0).proof())
                .ifPresent(proof -> assertThat(Routes.cost(plan.orElseThrow(), 0, proof.goal()))
                        .isLessThanOrEqualTo(proof.reached()));
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void plansTheSameJobTheSameWayOnEveryThread(long seed) {
        var job = SheetJob.random(seed, 40);
        Callable<RouterPlan> plan =
                () -> RouterPlanner.plan(job.stock(), job.cutList(), router(seed), SHORT, () -> false);
        var first = Threads.call(1, plan);

        var again = List.of(Threads.call(1, plan), Threads.call(2, plan));

        assertThat(again).allMatch(first::equals);
    }

    private static <T> Optional<T> unlessRefused(Supplier<T> plan) {
        try {
            return Optional.of(plan.get());
        } catch (ImpossiblePlanException refused) {
            return Optional.empty();
        }
    }

    private static Router router(long seed) {
        return Routers.of(2 + seed % 9, 0.5 + seed % 4);
    }

    /** A router keeps no blanks together. */
    private static CutList withoutBlanks(CutList list) {
        var asked = list.cutting();
        var together = asked.together().stream()
                .filter(group -> group.kind() != Kind.ONE_BLANK)
                .toList();
        return new CutList(
                list.lines(), list.hardware(), new Cutting(asked.later(), asked.free(), asked.mating(), together));
    }
}
