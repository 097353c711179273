package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.StockSheet.Source;
import org.standwright.part.Material;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.Proof.Goal;
import org.standwright.unit.Money;
import org.standwright.unit.Units;

class ProofWordsTest {
    private static final Material MATERIAL = Designs.BOARD_18.material();
    private static final StockSheet BOUGHT = board(Source.BOUGHT, Optional.of(Money.parse("62.00 EUR")));
    private static final StockSheet AT_HAND = board(Source.AT_HAND, Optional.empty());

    @Test
    void sheetsAreCounted() {
        assertThat(words(new Proof(Goal.SHEETS, 3, 3), BOUGHT, BOUGHT, BOUGHT)).isEqualTo("3 sheets; proved minimal");
        assertThat(words(new Proof(Goal.SHEETS, 1, 1), BOUGHT)).isEqualTo("1 sheet; proved minimal");
        assertThat(words(new Proof(Goal.SHEETS, 4, 3), BOUGHT, BOUGHT, BOUGHT, BOUGHT))
                .isEqualTo("4 sheets, bound 3, gap 1");
    }

    @Test
    void boardsAtHandAreNotBought() {
        assertThat(words(new Proof(Goal.SHEETS, 1, 1), BOUGHT, AT_HAND)).isEqualTo("1 sheet to buy; proved minimal");
        assertThat(words(new Proof(Goal.MONEY, 0, 0), AT_HAND)).isEqualTo("nothing to buy; proved minimal");
    }

    @Test
    void moneyIsCountedInItsCurrency() {
        assertThat(words(new Proof(Goal.MONEY, 124_000, 118_000), BOUGHT, BOUGHT))
                .isEqualTo("124.00 EUR, bound 118.00 EUR, gap 6.00 EUR");
        assertThat(words(new Proof(Goal.MONEY, 124_500, 124_500), BOUGHT)).isEqualTo("124.50 EUR; proved minimal");
    }

    @Test
    void areaIsCountedAsItIsRead() {
        assertThat(words(new Proof(Goal.AREA, 6_250_000, 6_000_000), BOUGHT))
                .isEqualTo("6.25 m², bound 6 m², gap 0.25 m²");
    }

    private static String words(Proof proof, StockSheet... boards) {
        var sheets = Stream.of(boards)
                .map(board -> new PlannedSheet(board, List.of(), List.of(), List.of()))
                .toList();
        return ProofWords.of(new MaterialPlan(MATERIAL, sheets, proof), Units.MM);
    }

    private static StockSheet board(Source source, Optional<Money> price) {
        return new StockSheet("board", MATERIAL, 2500, 1250, 18, OptionalInt.empty(), price, source);
    }
}
