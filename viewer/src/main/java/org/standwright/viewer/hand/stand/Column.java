package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.viewer.hand.change.Tape;

/**
 * What stands in one bay from top to bottom. A change keeps the height of everything that it does not name: where heights
 * were shared, they are given afterwards, but for one that takes what is left, so that the bay still fills its height when
 * the stand gets higher.
 */
record Column(ArrayNode contents, List<Cell> cells, Tape tape) {
    Column {
        cells = List.copyOf(cells);
    }

    /** The bay's contents with other cells. */
    ArrayNode with(List<Cell> others) {
        return Regrouped.contents(cells, others, tape);
    }

    /** The cells with one of them, and the one below it, at other heights that add up to the same. */
    List<Cell> moved(int upper, double height) {
        var moved = new ArrayList<>(settled(upper, upper + 1));
        double both = cells.get(upper).height() + cells.get(upper + 1).height();
        put(moved, upper, height);
        put(moved, upper + 1, both - height);
        return moved;
    }

    private static void put(List<Cell> cells, int at, double height) {
        if (!cells.get(at).isElastic()) {
            cells.set(at, cells.get(at).given(height));
        }
    }

    /** The mark of the tape on which one of two neighbours ends that gets about this height. */
    double snapped(int upper, double height) {
        var settled = settled(upper, upper + 1);
        double both = cells.get(upper).height() + cells.get(upper + 1).height();
        return settled.get(upper).isElastic() ? both - tape.snapped(both - height) : tape.snapped(height);
    }

    /** The cells with heights given, but for one, where some of these share what is left with others. */
    List<Cell> settled(int first, int last) {
        if (IntStream.rangeClosed(first, last).noneMatch(i -> cells.get(i).isElastic())) {
            return cells;
        }
        int rest = rest(first, last);
        return IntStream.range(0, cells.size())
                .mapToObj(i ->
                        i == rest ? alone(i) : cells.get(i).given(cells.get(i).height()))
                .toList();
    }

    /** Which of them takes what is left: openings before drawers, those further down first. */
    private int rest(int first, int last) {
        return IntStream.range(0, cells.size())
                .filter(i -> cells.get(i).isElastic())
                .boxed()
                .max(Comparator.<Integer>comparingInt(i -> cells.get(i).isDrawer() ? 0 : 1)
                        .thenComparingInt(i -> cells.get(i).isDrawer() || i < first || i > last ? 1 : 0)
                        .thenComparingInt(i -> i))
                .orElseThrow();
    }

    private Cell alone(int at) {
        var cell = cells.get(at);
        boolean only =
                cells.stream().filter(other -> other.source() == cell.source()).count() == 1;
        return only && cell.share() != Cell.Share.FILLED ? cell : cell.rest();
    }

    /** These cells, one of which takes what is left; the one nearest to a place where none did. */
    static List<Cell> elastic(List<Cell> cells, int at) {
        if (cells.isEmpty() || cells.stream().anyMatch(Cell::isElastic)) {
            return cells;
        }
        var elastic = new ArrayList<>(cells);
        int place = Math.min(at, cells.size() - 1);
        elastic.set(place, cells.get(place).rest());
        return elastic;
    }
}
