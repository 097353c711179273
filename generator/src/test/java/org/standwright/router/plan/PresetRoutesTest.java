package org.standwright.router.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.built.Furniture;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;

class PresetRoutesTest {
    /** Its strips are as long as a saw can make them from the sheet: 2490 of 2500 mm. */
    private static final String LONG_STRIPS = "Corner walls";

    static Stream<Design> designs() {
        return Stream.<Design>concat(Presets.stands(), Presets.walls())
                .filter(design -> !design.name().equals(LONG_STRIPS));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void takesNoMoreBoardsOfAnyMaterialThanTheSaw(Design design) {
        var cutList = CutList.of(built(design));
        var stock = Stock.of(design);
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
        var design = Presets.walls()
                .filter(one -> one.name().equals(LONG_STRIPS))
                .findFirst()
                .orElseThrow();
        var cutList = CutList.of(built(design));

        assertThatThrownBy(() -> Routes.plan(Stock.of(design), cutList, Routers.usual()))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessageContaining("5.88 mm too short")
                .hasMessageContaining("Use a smaller bit or margin: 5.00 mm together would do.");
        assertThat(Routes.plan(Stock.of(design), cutList, Routers.of(3.5, 1.5)).materials())
                .isNotEmpty();
    }

    private static Furniture built(Design design) {
        return design instanceof StandDesign stand ? StandBuilder.build(stand) : WallBuilder.build((WallDesign) design);
    }
}
