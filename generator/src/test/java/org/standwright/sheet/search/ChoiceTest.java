package org.standwright.sheet.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Layout;
import org.standwright.sheet.lane.Tally;

class ChoiceTest {
    /** A is 10 x 6, B 10 x 4, C 10 x 7, D 10 x 3: AB and CD fill a board of 10 x 10 each. */
    private final PackingJob job = Pack.boards(10, 10)
            .straight()
            .pieces(10, 6, 1)
            .pieces(10, 4, 1)
            .pieces(10, 7, 1)
            .pieces(10, 3, 1)
            .job();

    private final Terms terms = new Terms(job);

    @Test
    void unitesTheGoodHalvesOfTwoLayouts() {
        var best = layout(terms, "AB", "C", "D");
        var other = layout(terms, "A", "B", "CD");

        assertThat(best.cost()).isEqualTo(3 * Tally.DEAR);
        var united = new Choice(terms, best, List.of(patterns(terms, other)), List.of())
                .cheaper(-1)
                .orElseThrow();
        assertThat(united.cost()).isEqualTo(2 * Tally.DEAR);
        assertThat(TreeCheck.faults(job, trees(united))).isEmpty();
    }

    @Test
    void findsNoneWhereTheBoardsHoldNoCheaperLayout() {
        var best = layout(terms, "AB", "C", "D");
        var other = layout(terms, "BC", "A", "D");

        assertThat(new Choice(terms, best, List.of(patterns(terms, other)), List.of()).cheaper(-1))
                .isEmpty();
    }

    @Test
    void takesPiecesOffThatAreThereTooOften() {
        var three = Pack.boards(10, 10)
                .straight()
                .pieces(10, 6, 1)
                .pieces(10, 4, 1)
                .pieces(10, 3, 2)
                .job();
        var threeTerms = new Terms(three);
        var best = layout(threeTerms, "AB", "C", "C");
        var other = layout(threeTerms, "BCC");

        var cheaper = new Choice(threeTerms, best, List.of(patterns(threeTerms, other)), List.of())
                .cheaper(-1)
                .orElseThrow();
        assertThat(cheaper.count()).isEqualTo(2);
        assertThat(TreeCheck.faults(three, trees(cheaper))).isEmpty();
    }

    @Test
    void leavesTheBoardsOfOtherLayoutsAsTheyAre() {
        var best = layout(terms, "AB", "C", "D");
        var other = layout(terms, "A", "B", "CD");
        new Choice(terms, best, List.of(patterns(terms, other)), List.of()).cheaper(-1);

        assertThat(trees(best)).isEqualTo(trees(layout(terms, "AB", "C", "D")));
        assertThat(trees(other)).isEqualTo(trees(layout(terms, "A", "B", "CD")));
    }

    private List<CutTree> trees(Layout<Board> layout) {
        return Packing.of(terms.job, layout).boards();
    }

    private static Patterns patterns(Terms terms, Layout<Board> layout) {
        var patterns = new Patterns(terms);
        patterns.collect(layout);
        return patterns;
    }

    /** Each board's pieces one above the other, said by the letters of their types. */
    private static Layout<Board> layout(Terms terms, String... boards) {
        var layout = Layout.<Board>empty(terms.tally);
        for (int i = 0; i < boards.length; i++) {
            layout.add(Board.whole(terms, 0, layout.owner()));
            for (char letter : boards[i].toCharArray()) {
                int type = letter - 'A';
                var board = layout.own(i);
                board.insert(board.rest(0), type, terms.length[type], terms.width[type], true);
                layout.place(type);
            }
        }
        return layout;
    }
}
