package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Hangs holders one after the other, each at its best place: most used first, then heaviest, then widest. Then all that
 * hang are settled.
 */
final class Hanging {
    private static final Comparator<ToHang> ORDER = Comparator.comparing(ToHang::use)
            .thenComparing(Comparator.comparingDouble(ToHang::mass).reversed())
            .thenComparing(Comparator.comparingDouble(ToHang::width).reversed())
            .thenComparingInt(ToHang::at);

    private final Search search;

    Hanging(Search search) {
        this.search = search;
    }

    /** What hangs after a try, and what found no place. */
    record Outcome(Layout layout, List<ToHang> left) {}

    /**
     * Hangs and settles them; then what found no place is tried once more.
     *
     * @param board with what its maker hung
     */
    Outcome all(List<ToHang> holders, Board board) {
        var greedy = inTurn(holders, board);
        new Settling(search, greedy.layout).settle();
        return inOrder(greedy.left, greedy.layout);
    }

    /**
     * Where some find no place, all are tried once more with those first; that is taken if nothing loses its place by it.
     */
    Outcome inTurn(List<ToHang> holders, Board board) {
        var ordered = holders.stream().sorted(ORDER).toList();
        var first = inOrder(ordered, new Layout(board.copy()));
        if (first.left.isEmpty()) {
            return first;
        }
        var again = new ArrayList<>(first.left);
        ordered.stream().filter(holder -> !first.left.contains(holder)).forEach(again::add);
        var second = inOrder(again, new Layout(board.copy()));
        return second.left.size() < first.left.size() && first.left.containsAll(second.left) ? second : first;
    }

    /** On top of what hangs there. */
    private Outcome inOrder(List<ToHang> holders, Layout layout) {
        var left = new ArrayList<ToHang>();
        for (var holder : holders) {
            search.best(holder, layout.board())
                    .ifPresentOrElse(place -> layout.hang(new Hung(holder, place)), () -> left.add(holder));
        }
        return new Outcome(layout, left);
    }
}
