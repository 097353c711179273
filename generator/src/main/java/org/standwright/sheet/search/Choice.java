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
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;

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
    private final Layout<Board> best;
    private final List<Board> boards = new ArrayList<>();
    private final List<Pattern> patterns;
    private final int[] needed;
    private final int[] available;

    /**
     * @param best layout so far, without a missing piece
     * @param met boards that the lanes came by
     * @param proving boards that prices led to
     */
    Choice(Terms terms, Layout<Board> best, List<Patterns> met, List<CutTree> proving) {
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
                .map(board -> new Pattern(board.counts(), terms.tally.cost(board.kind()), board.kind()))
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
    Optional<Layout<Board>> cheaper(long owner) {
        var patterns = boards.stream()
                .map(board -> new Pattern(board.counts(), terms.tally.cost(board.kind()), board.kind()))
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
    Layout<Board> start(long most, Dice dice, long owner) {
        var some = new ArrayList<Pattern>();
        for (var pattern : patterns) {
            some.add(dice.below(4) == 0 ? pattern.without() : pattern);
        }
        return layout(PatternDive.of(some, needed, available, most), owner);
    }

    private Layout<Board> layout(int[] uses, long owner) {
        var layout = Layout.<Board>empty(terms.tally);
        layout.take(layout, owner);
        for (int i = 0; i < uses.length; i++) {
            for (int use = 0; use < uses[i]; use++) {
                layout.lay(boards.get(i));
            }
        }
        takeSurplusOff(layout);
        return layout;
    }

    /** Takes pieces off that are there too often. */
    private void takeSurplusOff(Layout<Board> layout) {
        for (int type = 0; type < terms.types(); type++) {
            int surplus = type;
            for (int i = 0; i < layout.count(); i++) {
                while (layout.missing(type) < 0 && layout.board(i).has(type)) {
                    layout.takeOff(i, (board, missing) -> board.removeOne(surplus, missing));
                }
            }
        }
        layout.dropUnused();
    }
}
