package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Well filled boards that a lane came by, each set of pieces once. */
final class Patterns {
    private static final int MOST = 5000;
    /** Share of its area that a board's pieces cover at least. */
    private static final double LEAST_FILL = 0.7;

    private final Terms terms;
    private final Set<Long> marks = new HashSet<>();
    private final List<Board> boards = new ArrayList<>();

    Patterns(Terms terms) {
        this.terms = terms;
    }

    /** Adds the boards that this owner changed. */
    void collect(Layout layout, long owner) {
        for (int i = 0; i < layout.count() && boards.size() < MOST; i++) {
            var board = layout.board(i);
            if (board.owner() == owner
                    && board.pieceArea()
                            >= LEAST_FILL * terms.kind(board.kind()).area()
                    && marks.add(board.mark() + board.kind())) {
                boards.add(board);
            }
        }
    }

    List<Board> boards() {
        return boards;
    }
}
