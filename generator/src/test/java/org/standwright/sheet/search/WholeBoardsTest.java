package org.standwright.sheet.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.SawnSheet;
import org.standwright.sheet.plan.Seeds;

class WholeBoardsTest {
    /** Measured on 40: all with 10, 20 and 40 pieces, 38 with 80. */
    @ParameterizedTest
    @CsvSource({"10, 1", "20, 1", "40, 0.95", "80, 0.7"})
    void findsSheetsAgainThatWereSawnAtRandom(int pieces, double least) {
        long found = Seeds.fewOrMany(10, 400)
                .filter(seed -> {
                    var job = SawnSheet.random(seed, pieces);
                    var boards = WholeBoards.of(job, 1, 42);
                    boards.ifPresent(
                            trees -> assertThat(TreeCheck.faults(job, trees)).isEmpty());
                    return boards.isPresent();
                })
                .count();

        assertThat(found)
                .isGreaterThanOrEqualTo((long) (least * Seeds.fewOrMany(10, 400).count()));
    }

    @Test
    void fillsSeveralBoardsAndKeepsTheGrain() {
        var straight =
                Pack.boards(10, 6).straight().pieces(4, 6, 2).pieces(6, 3, 4).job();
        var boards = WholeBoards.of(straight, 2, 1).orElseThrow();

        assertThat(boards).hasSize(2);
        assertThat(TreeCheck.faults(straight, boards)).isEmpty();
    }

    @Test
    void findsNoneWhereThereIsWasteOrItCostsMoreOrTheSawIsNotAbleTo() {
        var pack = Pack.boards(10, 6).straight().pieces(4, 6, 1).pieces(6, 3, 2);
        var ripsFirst = new CutRules(0, CutRules.ANY, First.RIP, CutRules.ANY, CutRules.ANY, CutRules.NONE);

        assertThat(WholeBoards.of(pack.job(), 1, 1)).isPresent();
        assertThat(WholeBoards.of(pack.job(), 0, 1)).isEmpty();
        assertThat(WholeBoards.of(pack.rules(ripsFirst).job(), 1, 1)).isEmpty();
        assertThat(WholeBoards.of(pack.pieces(1, 1, 1).job(), 1, 1)).isEmpty();
    }
}
