package org.standwright.sheet.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.sheet.Cut.Direction.CROSSCUT;
import static org.standwright.sheet.Cut.Direction.RIP;

import java.util.List;
import org.junit.jupiter.api.Test;

class CutNodeTest {
    private static final CutNode.Piece A = new CutNode.Piece(0, 10, 4, false);
    private static final CutNode.Piece B = new CutNode.Piece(1, 10, 3, false);

    @Test
    void mergesTheRestsOfASplitIntoOneAtItsEnd() {
        var split = CutNode.split(RIP, 10, 9, List.of(rest(10, 1), A, rest(10, 4)));

        assertThat(split).isEqualTo(new CutNode.Split(RIP, 10, 9, List.of(A, rest(10, 5))));
    }

    @Test
    void takesASplitOfTheSameDirectionApart() {
        var inner = CutNode.split(RIP, 10, 6, List.of(A, rest(10, 2)));

        assertThat(CutNode.split(RIP, 10, 9, List.of(inner, B)))
                .isEqualTo(new CutNode.Split(RIP, 10, 9, List.of(A, B, rest(10, 2))));
    }

    @Test
    void becomesARestAgainWhenItsLastPieceGoes() {
        var strip = CutNode.split(CROSSCUT, 20, 4, List.of(A, rest(10, 4)));
        var board = CutNode.split(RIP, 20, 9, List.of(strip, rest(20, 5)));

        assertThat(board.replace(A, rest(10, 4))).isEqualTo(rest(20, 9));
    }

    @Test
    void givesBackABoardThatWasBegunForNothing() {
        var job = SheetJob.sheet(10, 10).pieces("A", 5, 5, 1);
        var packing = PackingJob.of(job.sheet(), job.saw(), job.lines());
        var layout = Layout.empty(packing);
        layout.begin(Board.whole(packing));

        layout.returnWholeBoards();

        assertThat(layout.boards()).isEmpty();
    }

    private static CutNode.Rest rest(int length, int width) {
        return new CutNode.Rest(length, width);
    }
}
