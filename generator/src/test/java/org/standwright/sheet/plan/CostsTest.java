package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Proof.Goal;
import org.standwright.unit.Money;

class CostsTest {
    private static final Material WOOD = new Material("board", 18, 650, Grain.NONE);

    @Test
    void countsSheetsOfOneSizeMoneyWhereItIsKnownAndAreaWhereNot() {
        assertThat(Costs.of(List.of(sheet(2440, "80 EUR"))).goal()).isEqualTo(Goal.SHEETS);
        assertThat(Costs.of(List.of(sheet(2440, "80 EUR"), sheet(1525, "50 EUR")))
                        .goal())
                .isEqualTo(Goal.MONEY);
        assertThat(Costs.of(List.of(sheet(2440, "80 EUR"), sheet(1525, "50 USD")))
                        .goal())
                .isEqualTo(Goal.AREA);
    }

    @Test
    void countsMoneyInThousandths() {
        var sheets = List.of(sheet(2440, "80.5 EUR"), sheet(1525, "50 EUR"));

        assertThat(Costs.of(sheets).of(sheets.get(0))).isEqualTo(80_500);
    }

    @Test
    void refusesPricesThatCouldNotBeAddedUp() {
        var sheets = List.of(sheet(2440, "2000000 EUR"), sheet(1525, "50 EUR"));

        assertThatThrownBy(() -> Costs.of(sheets).of(sheets.get(0)))
                .isInstanceOf(ImpossiblePlanException.class)
                .hasMessage("a sheet of 'board' costs 2000000 EUR, but prices above 1000000 are not compared."
                        + " Write its price in a larger unit, or leave it out.");
    }

    private static StockSheet sheet(double length, String price) {
        return StockSheet.bought(new SheetGood(WOOD, length, 1220, Optional.empty(), Optional.of(Money.parse(price))));
    }
}
