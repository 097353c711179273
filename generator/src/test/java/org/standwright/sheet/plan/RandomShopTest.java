package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A planner that throws anything but a refusal has drawn something that its own verifier finds no way to cut. */
class RandomShopTest {
    static LongStream seeds() {
        return Seeds.fewOrMany(150, 2000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cutsAsDrawnOrRefuses(long seed) {
        var shop = RandomShop.of(seed);
        try {
            assertThat(SheetPlanner.plan(shop.stock(), shop.cutList(), Effort.QUICK)
                            .materials())
                    .hasSize(1);
        } catch (ImpossiblePlanException refused) {
            assertThat(refused.getMessage()).isNotBlank();
        }
    }

    @Test
    void refusesNoMoreThanOneInFour() {
        long refused =
                LongStream.range(0, 100).filter(RandomShopTest::isRefused).count();

        assertThat(refused).isLessThanOrEqualTo(25);
    }

    private static boolean isRefused(long seed) {
        var shop = RandomShop.of(seed);
        try {
            SheetPlanner.plan(shop.stock(), shop.cutList(), Effort.QUICK);
            return false;
        } catch (ImpossiblePlanException refused) {
            return true;
        }
    }
}
