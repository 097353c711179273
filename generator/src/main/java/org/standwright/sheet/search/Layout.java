package org.standwright.sheet.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.standwright.sheet.job.CutTree;

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
        for (int left : missing) {
            if (left > 0) {
                return false;
            }
        }
        return true;
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

    /** Area of the largest single rest, kerf taken off, units². */
    long largestOffcut() {
        long largest = 0;
        for (int i = 0; i < count; i++) {
            largest = Math.max(largest, boards[i].largestOffcut());
        }
        return largest;
    }

    /** Area that no piece covers, kerf included, units². */
    long freeArea() {
        long free = 0;
        for (int i = 0; i < count; i++) {
            free += terms.kind(boards[i].kind()).area() - boards[i].pieceArea();
        }
        return free;
    }

    boolean has(int kind) {
        return used[kind] < terms.kind(kind).count();
    }

    /** Takes an uncut board off the stack; the last in the list. */
    void begin(int kind) {
        add(Board.whole(terms, kind, owner));
    }

    /** Adds a board that carries pieces which are missing here. */
    void add(Board board) {
        if (count == boards.length) {
            boards = Arrays.copyOf(boards, 2 * count);
        }
        boards[count++] = board;
        used[board.kind()]++;
        cost += terms.cost[board.kind()];
    }

    /** Adds a board and counts its pieces off those that are missing, below zero where they are too many. */
    void lay(Board board) {
        add(board);
        int[] counts = board.counts();
        for (int type = 0; type < counts.length; type++) {
            missing[type] -= counts[type];
        }
    }

    /** Takes pieces off that are there too often. */
    void takeSurplusOff() {
        for (int type = 0; type < missing.length; type++) {
            for (int i = 0; i < count && missing[type] < 0; i++) {
                while (missing[type] < 0 && boards[i].has(type)) {
                    own(i).removeOne(type, missing);
                }
            }
        }
        dropUnused();
    }

    void place(int type) {
        missing[type]--;
    }

    /** The board, as this layout's own to change. */
    Board own(int index) {
        if (boards[index].owner() != owner) {
            boards[index] = boards[index].copy(owner);
        }
        return boards[index];
    }

    /** Takes a piece or a split off; a board that is whole again goes back to the stack. */
    void remove(int index, int node) {
        var board = own(index);
        board.remove(node, missing);
        if (board.isWhole()) {
            drop(index);
        } else if (board.startsAcross() && !board.hasSpanningPiece()) {
            clear(index);
        }
    }

    /** Gives up a board and all that is on it. */
    void clear(int index) {
        own(index).remove(0, missing);
        drop(index);
    }

    /** The board with the most free share. */
    int emptiest() {
        return emptiest(kind -> true);
    }

    /** The board with the most free share of a kind that suits; -1 where there is none. */
    int emptiest(IntPredicate suits) {
        int emptiest = -1;
        double most = -1;
        for (int i = 0; i < count; i++) {
            if (!suits.test(boards[i].kind())) {
                continue;
            }
            double free = 1
                    - (double) boards[i].pieceArea()
                            / terms.kind(boards[i].kind()).area();
            if (free > most) {
                most = free;
                emptiest = i;
            }
        }
        return emptiest;
    }

    private void drop(int index) {
        used[boards[index].kind()]--;
        cost -= terms.cost[boards[index].kind()];
        boards[index] = boards[--count];
        boards[count] = null;
    }

    /** Boards that were begun for nothing go back to the stack. */
    void returnWholeBoards() {
        for (int i = count - 1; i >= 0; i--) {
            if (boards[i].isWhole()) {
                drop(i);
            }
        }
    }

    /** Boards of which nothing is cut go back to the stack. */
    void dropUnused() {
        for (int i = count - 1; i >= 0; i--) {
            if (boards[i].pieceArea() == 0) {
                drop(i);
            }
        }
    }

    List<CutTree> trees() {
        return IntStream.range(0, count)
                .mapToObj(i -> new CutTree(boards[i].kind(), boards[i].tree()))
                .toList();
    }
}
