package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.design.wall.built.HungHolder;

/** Hangs holders one after the other, each at its best place: most used first, then heaviest, then widest. */
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
    record Outcome(List<Hung> hung, List<ToHang> left) {}

    /** A holder with its place in the design, from 0. */
    record Hung(int at, HungHolder holder) {}

    /**
     * Where some find no place, all are tried once more with those first; that is taken if nothing loses its place by it.
     *
     * @param board with what its maker hung
     */
    Outcome all(List<ToHang> holders, Board board) {
        var ordered = holders.stream().sorted(ORDER).toList();
        var first = inOrder(ordered, board.copy());
        if (first.left.isEmpty()) {
            return first;
        }
        var again = new ArrayList<>(first.left);
        ordered.stream().filter(holder -> !first.left.contains(holder)).forEach(again::add);
        var second = inOrder(again, board.copy());
        return second.left.size() < first.left.size() && first.left.containsAll(second.left) ? second : first;
    }

    private Outcome inOrder(List<ToHang> holders, Board board) {
        var hung = new ArrayList<Hung>();
        var left = new ArrayList<ToHang>();
        for (var holder : holders) {
            search.best(holder, board)
                    .map(place -> board.hung(holder, place.wall(), place.row(), place.x(), false))
                    .ifPresentOrElse(
                            there -> {
                                board.hang(there);
                                hung.add(new Hung(holder.at(), there));
                            },
                            () -> left.add(holder));
        }
        return new Outcome(hung, left);
    }
}
