package org.standwright.router.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;

class PresetRoutesTest {
    /** Its strips are as long as a saw can make them from the sheet: 2490 of 2500 mm. */
    private static final String LONG_STRIPS = "Corner walls";

    static Stream<Furniture> furniture() {
        return Presets.furniture().stream()
                .filter(built -> !built.design().name().equals(LONG_STRIPS));
    }

    @ParameterizedTest
    @MethodSource("furniture")
    void takesNoMoreBoardsOfAnyMaterialThanTheSaw(Furniture built) {
        var cutList = CutList.of(built);
        var stock = Stock.of(built.design());
        var router = Routers.usual();
        var plan = RouterPlanner.plan(stock, cutList, router, Effort.QUICK, () -> false);
        var sawn = SheetPlanner.plan(stock, cutList, Effort.QUICK);

        assertThat(Routes.faults(stock, cutList, router, plan)).isEmpty();
        assertThat(plan.materials()).hasSameSizeAs(sawn.materials());
        for (int i = 0; i < plan.materials().size(); i++) {
            var saws = sawn.materials().get(i);
            assertThat(plan.materials().get(i).material()).isEqualTo(saws.material());
            assertThat(plan.materials().get(i).sheets())
                    .hasSizeLessThanOrEqualTo(saws.sheets().size());
        }
    }

    @Test
    void refusesStripsThatLeaveNoWayForTheBitRoundThem() {
        var built = Presets.furniture().stream()
                .filter(one -> one.design().name().equals(LONG_STRIPS))
                .findFirst()
                .orElseThrow();
        var stock = Stock.of(built.design());
        var cutList = CutList.of(built);

        assertThatThrownBy(() -> Routes.plan(stock, cutList, Routers.usual()))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("5.88 mm too short")
                .hasMessageContaining("Use a smaller bit or margin: 5.00 mm together would do.");
        assertThat(Routes.plan(stock, cutList, Routers.of(3.5, 1.5)).materials())
                .isNotEmpty();
    }
}
