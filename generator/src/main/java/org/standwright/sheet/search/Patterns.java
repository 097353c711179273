package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.standwright.sheet.lane.Layout;

/** Boards that a lane came by, each set of pieces once; when there are too many, the better filled half stays. */
final class Patterns {
    private static final int MOST = 4000;

    private final Terms terms;
    private final Set<Long> marks = new HashSet<>();
    private final List<Board> boards = new ArrayList<>();
    private double leastFill = 0.6;

    Patterns(Terms terms) {
        this.terms = terms;
    }

    /** Adds the boards that the layout's owner changed. */
    void collect(Layout<Board> layout) {
        for (int i = 0; i < layout.count(); i++) {
            var board = layout.board(i);
            if (board.owner() == layout.owner() && fill(board) >= leastFill && marks.add(board.mark())) {
                boards.add(board);
            }
        }
        if (boards.size() > MOST) {
            keepTheBetterHalf();
        }
    }

    private void keepTheBetterHalf() {
        boards.sort(Comparator.comparingDouble(this::fill).reversed());
        leastFill = fill(boards.get(MOST / 2));
        boards.subList(MOST / 2, boards.size()).clear();
    }

    /** Share of its area that a board's pieces cover. */
    private double fill(Board board) {
        return (double) board.pieceArea() / terms.kind(board.kind()).area();
    }

    List<Board> boards() {
        return boards;
    }
}
