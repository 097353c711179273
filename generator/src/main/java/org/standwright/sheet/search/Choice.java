package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.standwright.sheet.cover.Pattern;
import org.standwright.sheet.cover.PatternCover;
import org.standwright.sheet.cover.PatternDive;
import org.standwright.sheet.job.CutTree;

/**
 * Puts boards that the lanes came by at different times together to a cheaper layout, if there is one among them: a set
 * cover. Pieces that are there too often then come off again.
 */
final class Choice {
    /** Boards to choose from: more are too many for the linear programs. */
    private static final int MOST_BOARDS = 800;

    private static final int MOST_NODES = 40;
    /** Boards of this owner are copied before they are changed. */
    private static final long NOBODY = Long.MIN_VALUE;

    private final Terms terms;
    private final Layout best;
    private final List<Board> boards = new ArrayList<>();
    private final List<Pattern> patterns;
    private final int[] needed;
    private final int[] available;

    /**
     * @param best layout so far, without a missing piece
     * @param met boards that the lanes came by
     * @param proving boards that prices led to
     */
    Choice(Terms terms, Layout best, List<Patterns> met, List<CutTree> proving) {
        this.terms = terms;
        this.best = best;
        var marks = new HashSet<Long>();
        for (int i = 0; i < best.count(); i++) {
            add(best.board(i), marks);
        }
        proving.forEach(tree -> add(Board.of(terms, tree, NOBODY), marks));
        int own = boards.size();
        met.forEach(some -> some.boards().forEach(board -> add(board, marks)));
        boards.subList(own, boards.size())
                .sort(Comparator.comparingDouble(this::fill).reversed());
        boards.subList(Math.min(MOST_BOARDS, boards.size()), boards.size()).clear();
        this.patterns = boards.stream()
                .map(board -> new Pattern(board.counts(), terms.cost[board.kind()], board.kind()))
                .toList();
        this.needed = terms.job.types().stream().mapToInt(type -> type.count()).toArray();
        this.available =
                terms.job.kinds().stream().mapToInt(kind -> kind.count()).toArray();
    }

    private void add(Board board, HashSet<Long> marks) {
        if (marks.add(board.mark())) {
            boards.add(board);
        }
    }

    private double fill(Board board) {
        return (double) board.pieceArea() / terms.kind(board.kind()).area();
    }

    /** A layout that costs less, no piece missing. Its boards belong to {@code owner}. */
    Optional<Layout> cheaper(long owner) {
        var patterns = boards.stream()
                .map(board -> new Pattern(board.counts(), terms.cost[board.kind()], board.kind()))
                .toList();
        int[] needed = terms.job.types().stream().mapToInt(type -> type.count()).toArray();
        int[] available =
                terms.job.kinds().stream().mapToInt(kind -> kind.count()).toArray();
        return PatternCover.cheaper(patterns, needed, available, best.cost(), MOST_NODES)
                .map(uses -> layout(uses, owner));
    }

    /**
     * Boards for no more than so much as the linear program likes them best, pieces missing; each time from another
     * part of those there are.
     */
    Layout start(long most, Dice dice, long owner) {
        var some = new ArrayList<Pattern>();
        for (var pattern : patterns) {
            some.add(dice.below(4) == 0 ? pattern.without() : pattern);
        }
        return layout(PatternDive.of(some, needed, available, most), owner);
    }

    private Layout layout(int[] uses, long owner) {
        var layout = Layout.empty(terms);
        layout.take(layout, owner);
        for (int i = 0; i < uses.length; i++) {
            for (int use = 0; use < uses[i]; use++) {
                layout.lay(boards.get(i));
            }
        }
        layout.takeSurplusOff();
        return layout;
    }
}
