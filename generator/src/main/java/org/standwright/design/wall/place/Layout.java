package org.standwright.design.wall.place;

import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the planner has hung on a board so far, which it may take off again. */
final class Layout {
    private static final Comparator<Hung> WORST_FIRST = Comparator.comparingDouble(
                    (Hung hung) -> hung.place().cost())
            .reversed()
            .thenComparingInt(Hung::at);

    private final Board board;
    private final SortedMap<Integer, Hung> hung = new TreeMap<>();

    /** @param board with what its maker hung */
    Layout(Board board) {
        this.board = board;
    }

    Board board() {
        return board;
    }

    void hang(Hung one) {
        board.hang(one);
        hung.put(one.at(), one);
    }

    void takeOff(Hung one) {
        board.takeOff(one);
        hung.remove(one.at());
    }

    /** For good. */
    void move(Hung one, Place place) {
        takeOff(one);
        board.hasLeft(one);
        hang(one.at(place));
    }

    Hung hung(int at) {
        return hung.get(at);
    }

    /** In the order of the design. */
    List<Hung> all() {
        return List.copyOf(hung.values());
    }

    List<Hung> worstFirst() {
        return hung.values().stream().sorted(WORST_FIRST).toList();
    }

    double cost() {
        return hung.values().stream().mapToDouble(one -> one.place().cost()).sum();
    }
}
