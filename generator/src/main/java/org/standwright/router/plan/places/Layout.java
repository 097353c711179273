package org.standwright.router.plan.places;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Boards in work and the pieces that are not on one yet. Copies share their boards; a board is copied before the first
 * change that its layout's owner makes to it.
 */
final class Layout {
    private final Terms terms;
    private Board[] boards = new Board[8];
    private int count;
    private final int[] missing;
    private final int[] used;
    private long cost;
    private long owner;

    private Layout(Terms terms, int[] missing) {
        this.terms = terms;
        this.missing = missing;
        this.used = new int[terms.cost.length];
    }

    /** No board begun, every piece missing. */
    static Layout empty(Terms terms) {
        return new Layout(
                terms, terms.job.types().stream().mapToInt(type -> type.count()).toArray());
    }

    /** Boards filled like these. */
    static Layout of(Terms terms, List<FilledBoard> filled) {
        var layout = empty(terms);
        for (var from : filled) {
            var board = Board.empty(terms, from.kind(), layout.owner);
            for (var place : from.places()) {
                board.place(place.type(), place.turned(), place.x(), place.y());
                layout.missing[place.type()]--;
            }
            layout.add(board);
        }
        return layout;
    }

    Layout copy() {
        var copy = new Layout(terms, missing.clone());
        copy.take(this, owner);
        return copy;
    }

    /** Becomes a copy of another layout; changes belong to this owner from now on. */
    void take(Layout other, long newOwner) {
        if (boards.length < other.count) {
            boards = new Board[other.boards.length];
        }
        System.arraycopy(other.boards, 0, boards, 0, other.count);
        System.arraycopy(other.missing, 0, missing, 0, missing.length);
        System.arraycopy(other.used, 0, used, 0, used.length);
        count = other.count;
        cost = other.cost;
        owner = newOwner;
    }

    int count() {
        return count;
    }

    Board board(int index) {
        return boards[index];
    }

    int missing(int type) {
        return missing[type];
    }

    /** In the search's own count, see {@link Terms#DEAR}. */
    long cost() {
        return cost;
    }

    boolean isComplete() {
        return missingArea() == 0;
    }

    long missingArea() {
        long area = 0;
        for (int type = 0; type < missing.length; type++) {
            area += missing[type] * terms.area[type];
        }
        return area;
    }

    double restValue() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += boards[i].restValue();
        }
        return sum;
    }

    /** Area of the largest single free rectangle, units². */
    long largestRest() {
        long largest = 0;
        for (int i = 0; i < count; i++) {
            largest = Math.max(largest, boards[i].largestRest());
        }
        return largest;
    }

    boolean has(int kind) {
        return used[kind] < terms.kind(kind).count();
    }

    /** Takes an empty board off the stack; the last in the list. */
    Board begin(int kind) {
        var board = Board.empty(terms, kind, owner);
        add(board);
        return board;
    }

    private void add(Board board) {
        if (count == boards.length) {
            boards = Arrays.copyOf(boards, 2 * count);
        }
        boards[count++] = board;
        used[board.kind()]++;
        cost += terms.cost[board.kind()];
    }

    void place(int index, int type, boolean turned, int x, int y) {
        own(index).place(type, turned, x, y);
        missing[type]--;
    }

    /** The board, as this layout's own to change. */
    private Board own(int index) {
        if (boards[index].owner() != owner) {
            boards[index] = boards[index].copy(owner);
        }
        return boards[index];
    }

    void remove(int index, int piece) {
        own(index).remove(piece, missing);
    }

    void removeAround(int index, int first, int second) {
        own(index).removeAround(first, second, missing);
    }

    /** Gives up a board and all that is on it. */
    void clear(int index) {
        var board = own(index);
        while (board.pieces() > 0) {
            board.remove(board.pieces() - 1, missing);
        }
        drop(index);
    }

    /** Gives up a board for one of its kind of which only so much may be used. */
    void narrow(int index, int length, int width) {
        int kind = boards[index].kind();
        clear(index);
        add(Board.using(terms, kind, owner, length, width));
    }

    /** Opens boards of which only a part was to be used. */
    void open() {
        for (int i = 0; i < count; i++) {
            boards[i] = boards[i].opened(owner);
        }
    }

    /** Tells what is free again after pieces were taken off; boards without pieces go back to the stack. */
    void refresh() {
        for (int i = count - 1; i >= 0; i--) {
            if (boards[i].pieces() == 0 && !isNarrow(i)) {
                drop(i);
            } else {
                boards[i].refresh();
            }
        }
    }

    /** Boards without pieces go back to the stack. */
    void dropUnused() {
        for (int i = count - 1; i >= 0; i--) {
            if (boards[i].pieces() == 0) {
                drop(i);
            }
        }
    }

    private boolean isNarrow(int index) {
        var size = terms.kind(boards[index].kind());
        return boards[index].length() < size.length() || boards[index].width() < size.width();
    }

    /** The board of a kind with the most free area; -1 where there is none. */
    int emptiest(int kind) {
        int emptiest = -1;
        for (int i = 0; i < count; i++) {
            if (boards[i].kind() == kind && (emptiest < 0 || boards[i].pieceArea() < boards[emptiest].pieceArea())) {
                emptiest = i;
            }
        }
        return emptiest;
    }

    /** The board with the most free share. */
    int emptiest() {
        int emptiest = 0;
        for (int i = 1; i < count; i++) {
            if (share(i) < share(emptiest)) {
                emptiest = i;
            }
        }
        return emptiest;
    }

    private double share(int index) {
        return (double) boards[index].pieceArea()
                / terms.kind(boards[index].kind()).area();
    }

    private void drop(int index) {
        used[boards[index].kind()]--;
        cost -= terms.cost[boards[index].kind()];
        boards[index] = boards[--count];
        boards[count] = null;
    }

    List<FilledBoard> filled() {
        return IntStream.range(0, count)
                .mapToObj(i -> new FilledBoard(boards[i].kind(), boards[i].places(), boards[i].largestRest()))
                .toList();
    }
}
