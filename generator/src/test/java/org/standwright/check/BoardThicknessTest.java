package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.BOARD_18;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.standwright.design.StandDesign;
import org.standwright.design.StockEntry;
import org.standwright.design.StockPlan;
import org.standwright.design.kit.Keep;

class BoardThicknessTest {
    /** 18 - 17.7 mm by hand. */
    @Test
    void saysByHowMuchPartsOfAThinnerBoardMoveTheStack() {
        assertThat(Stands.found(with(17.7), "board-thickness")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.subject()).isEqualTo("rest");
            assertThat(finding.message())
                    .contains("Measured 17.7 mm", "counts on 18 mm", "0.3 mm thinner", "for each layer");
        });
    }

    @Test
    void passesOverWhatNobodyNotices() {
        assertThat(Stands.found(with(18), "board-thickness")).isEmpty();
        assertThat(Stands.found(with(17.9), "board-thickness")).isEmpty();
        assertThat(Stands.found(with(18.15), "board-thickness"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("thicker"));
    }

    private static StandDesign with(double thickness) {
        var rest = new StockEntry(
                BOARD_18,
                Optional.of("rest"),
                OptionalDouble.of(900),
                OptionalDouble.of(400),
                OptionalInt.empty(),
                OptionalDouble.of(thickness),
                Optional.empty(),
                true);
        return Stands.plain(draft -> draft.stock = new StockPlan(Keep.USUAL, List.of(rest)));
    }
}
