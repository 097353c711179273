package org.standwright.router.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.RandomShop;
import org.standwright.sheet.plan.Seeds;
import org.standwright.sheet.plan.SheetJob;
import org.standwright.sheet.plan.SheetPlanner;

class RandomRoutesTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(8, 200);
    }

    static LongStream shops() {
        return Seeds.fewOrMany(40, 2000);
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
        var sawn = Routes.sawn(job.stock(), job.cutList(), router);

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
        RouterPlan plan;
        try {
            plan = RouterPlanner.plan(shop.stock(), cutList, router, Effort.QUICK, () -> false);
        } catch (ImpossiblePlanException refused) {
            assertThat(refused.getMessage()).isNotBlank();
            assertThat(isSawn(shop.stock(), cutList, router)).isFalse();
            return;
        }
        assertThat(Routes.faults(shop.stock(), cutList, router, plan)).isEmpty();
        if (isSawn(shop.stock(), cutList, router)) {
            var proof = sawn(shop.stock(), cutList, router).materials().get(0).proof();
            assertThat(Routes.cost(plan, 0, proof.goal())).isLessThanOrEqualTo(proof.reached());
        }
    }

    @Test
    void refusesNoMoreThanOneShopInFour() {
        long refused =
                LongStream.range(0, 40).filter(RandomRoutesTest::isRefused).count();

        assertThat(refused).isLessThanOrEqualTo(10);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void plansTheSameJobTheSameWayOnEveryThread(long seed) {
        var job = SheetJob.random(seed, 40);
        var first = Routes.plan(job.stock(), job.cutList(), router(seed));

        var again = List.of(1, 2).stream()
                .map(threads -> Threads.call(threads, () -> Routes.plan(job.stock(), job.cutList(), router(seed))))
                .toList();

        assertThat(again).allMatch(first::equals);
    }

    private static boolean isRefused(long seed) {
        var shop = RandomShop.of(seed);
        try {
            RouterPlanner.plan(shop.stock(), shop.cutList(), router(seed), Effort.QUICK, () -> false);
            return false;
        } catch (ImpossiblePlanException refused) {
            return true;
        }
    }

    private static boolean isSawn(Stock stock, CutList cutList, Router router) {
        try {
            sawn(stock, cutList, router);
            return true;
        } catch (ImpossiblePlanException refused) {
            return false;
        }
    }

    private static SheetPlan sawn(Stock stock, CutList cutList, Router router) {
        var saw = new Saw(router.spacing(), router.spacing());
        var sawn = new Stock(stock.sheets(), saw, stock.keep(), stock.fit());
        return SheetPlanner.plan(sawn, cutList, Effort.QUICK);
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
