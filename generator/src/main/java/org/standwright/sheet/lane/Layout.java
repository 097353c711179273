package org.standwright.sheet.lane;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Boards in work and the pieces that are not on one yet. Copies share their boards; a board is copied before the first
 * change that its layout's owner makes to it.
 */
public final class Layout<B extends BoardInWork<B>> {
    private final Tally tally;
    /** Of class B: an array of a type that is not known cannot be made. */
    private Object[] boards = new Object[8];

    private int count;
    private final int[] missing;
    private final int[] used;
    private long cost;
    private long owner;

    private Layout(Tally tally, int[] missing) {
        this.tally = tally;
        this.missing = missing;
        this.used = new int[tally.kinds()];
    }

    /** No board begun, every piece missing. */
    public static <B extends BoardInWork<B>> Layout<B> empty(Tally tally) {
        return new Layout<>(tally, tally.needed());
    }

    public Layout<B> copy() {
        var copy = new Layout<B>(tally, missing.clone());
        copy.take(this, owner);
        return copy;
    }

    /** Becomes a copy of another layout; changes belong to this owner from now on. */
    public void take(Layout<B> other, long newOwner) {
        if (boards.length < other.count) {
            boards = new Object[other.boards.length];
        }
        System.arraycopy(other.boards, 0, boards, 0, other.count);
        System.arraycopy(other.missing, 0, missing, 0, missing.length);
        System.arraycopy(other.used, 0, used, 0, used.length);
        count = other.count;
        cost = other.cost;
        owner = newOwner;
    }

    public int count() {
        return count;
    }

    @SuppressWarnings("unchecked")
    public B board(int index) {
        return (B) boards[index];
    }

    public List<B> boards() {
        return IntStream.range(0, count).mapToObj(this::board).toList();
    }

    /** Pieces of a type without a place; below zero where there are too many. */
    public int missing(int type) {
        return missing[type];
    }

    /** In the search's own count, see {@link Tally#DEAR}. */
    public long cost() {
        return cost;
    }

    /** Whose boards it may change. */
    public long owner() {
        return owner;
    }

    public boolean isComplete() {
        for (int left : missing) {
            if (left > 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether no piece is missing and the boards cost no more than this. */
    public boolean isFor(long most) {
        return cost <= most && isComplete();
    }

    /** Whether it is complete and costs less, or the other is not complete. */
    boolean isBetter(Layout<B> than) {
        return isComplete() && (!than.isComplete() || cost < than.cost);
    }

    public long missingArea() {
        long area = 0;
        for (int type = 0; type < missing.length; type++) {
            area += missing[type] * tally.area(type);
        }
        return area;
    }

    public double restValue() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += board(i).restValue();
        }
        return sum;
    }

    /** Area of the largest single free rectangle, units². */
    public long largestRest() {
        long largest = 0;
        for (int i = 0; i < count; i++) {
            largest = Math.max(largest, board(i).largestRest());
        }
        return largest;
    }

    /** Whether one more board of a kind is there and keeps the cost within a limit. */
    public boolean affords(int kind, long limit) {
        return used[kind] < tally.kind(kind).count() && cost + tally.cost(kind) <= limit;
    }

    /** Adds a board that is empty, or carries pieces which are missing here all the same; the last in the list. */
    public void add(B board) {
        if (count == boards.length) {
            boards = Arrays.copyOf(boards, 2 * count);
        }
        boards[count++] = board;
        used[board.kind()]++;
        cost += tally.cost(board.kind());
    }

    /** Adds a board and counts its pieces off those that are missing, below zero where they are too many. */
    public void lay(B board) {
        add(board);
        int[] counts = board.counts();
        for (int type = 0; type < counts.length; type++) {
            missing[type] -= counts[type];
        }
    }

    /** Counts off a piece that its board has got. */
    public void place(int type) {
        missing[type]--;
    }

    /** Takes pieces off a board by a change that counts them up, by type, in the array that it is given. */
    public void takeOff(int index, BiConsumer<B, int[]> change) {
        change.accept(own(index), missing);
    }

    /** The board, as this layout's own to change. */
    public B own(int index) {
        var board = board(index);
        if (board.owner() == owner) {
            return board;
        }
        var copy = board.copy(owner);
        boards[index] = copy;
        return copy;
    }

    /** Has other boards of the same kinds and pieces instead. */
    public void replaceEach(UnaryOperator<B> other) {
        for (int i = 0; i < count; i++) {
            boards[i] = other.apply(board(i));
        }
    }

    /** Gives up a board and all that is on it. */
    public void clear(int index) {
        int[] counts = board(index).counts();
        for (int type = 0; type < counts.length; type++) {
            missing[type] += counts[type];
        }
        drop(index);
    }

    /** Boards without pieces go back to the stack. */
    public void dropUnused() {
        dropEach(board -> board.pieceArea() == 0);
    }

    /** Boards of this sort, which have no pieces, go back to the stack. */
    public void dropEach(Predicate<B> unused) {
        for (int i = count - 1; i >= 0; i--) {
            if (unused.test(board(i))) {
                drop(i);
            }
        }
    }

    private void drop(int index) {
        int kind = board(index).kind();
        used[kind]--;
        cost -= tally.cost(kind);
        boards[index] = boards[--count];
        boards[count] = null;
    }

    /** The board with the most free share. */
    int emptiest() {
        return emptiest(kind -> true);
    }

    /** The board with the most free share of a kind that suits; -1 where there is none. */
    public int emptiest(IntPredicate suits) {
        int emptiest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int kind = board(i).kind();
            double covered = (double) board(i).pieceArea() / tally.kind(kind).area();
            if (suits.test(kind) && covered < least) {
                least = covered;
                emptiest = i;
            }
        }
        return emptiest;
    }
}
