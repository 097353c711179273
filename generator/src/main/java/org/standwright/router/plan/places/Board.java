package org.standwright.router.plan.places;

import java.util.ArrayList;
import java.util.Arrays;
import org.standwright.sheet.lane.BoardInWork;

/** One board in work: its pieces at their places, and what is free beside them. */
final class Board implements BoardInWork<Board> {
    private static final int FIELDS = 4;
    private static final int TYPE = 0;
    private static final int TURNED = 1;
    private static final int X = 2;
    private static final int Y = 3;

    private final Terms terms;
    private final int kind;
    private final long owner;
    /** What pieces may lie on of it; the rest is kept free. */
    private final int length;

    private final int width;
    private int[] at;
    private int end;
    private final FreeSpace free;
    private long pieceArea;
    private boolean isStale;

    private Board(Terms terms, int kind, long owner, int length, int width, int[] at, FreeSpace free) {
        this.terms = terms;
        this.kind = kind;
        this.owner = owner;
        this.length = length;
        this.width = width;
        this.at = at;
        this.free = free;
    }

    static Board empty(Terms terms, int kind, long owner) {
        var size = terms.kind(kind);
        return using(terms, kind, owner, size.length(), size.width());
    }

    /** A board of which only so much may be used. */
    static Board using(Terms terms, int kind, long owner, int length, int width) {
        return new Board(terms, kind, owner, length, width, new int[8 * FIELDS], FreeSpace.of(length, width));
    }

    /** A board filled like this. */
    static Board of(Terms terms, FilledBoard filled, long owner) {
        var board = empty(terms, filled.kind(), owner);
        filled.places().forEach(place -> board.place(place.type(), place.turned(), place.x(), place.y()));
        return board;
    }

    /** The same board, to be changed by another owner. */
    @Override
    public Board copy(long newOwner) {
        var copy = new Board(terms, kind, newOwner, length, width, Arrays.copyOf(at, end + 4 * FIELDS), free.copy());
        copy.end = end;
        copy.pieceArea = pieceArea;
        return copy;
    }

    /** The same with all of the board to use. */
    Board opened(long newOwner) {
        var opened = empty(terms, kind, newOwner);
        for (int i = 0; i < end; i += FIELDS) {
            opened.place(at[i + TYPE], at[i + TURNED] == 1, at[i + X], at[i + Y]);
        }
        return opened;
    }

    @Override
    public int kind() {
        return kind;
    }

    @Override
    public long owner() {
        return owner;
    }

    @Override
    public long pieceArea() {
        return pieceArea;
    }

    int pieces() {
        return end / FIELDS;
    }

    FreeSpace free() {
        return free;
    }

    /** Whether only a part of it may be used. */
    boolean isNarrow() {
        var size = terms.kind(kind);
        return length < size.length() || width < size.width();
    }

    @Override
    public int[] counts() {
        var counts = new int[terms.types()];
        for (int i = 0; i < end; i += FIELDS) {
            counts[at[i + TYPE]]++;
        }
        return counts;
    }

    void place(int type, boolean turned, int x, int y) {
        if (end == at.length) {
            at = Arrays.copyOf(at, 2 * end);
        }
        at[end + TYPE] = type;
        at[end + TURNED] = turned ? 1 : 0;
        at[end + X] = x;
        at[end + Y] = y;
        end += FIELDS;
        pieceArea += terms.tally.area(type);
        free.take(x, y, terms.along(type, turned), terms.across(type, turned));
    }

    /**
     * Takes a piece off; what is free is told again by {@link #refresh}.
     *
     * @param missing counts it by its type
     */
    void remove(int index, int[] missing) {
        int i = index * FIELDS;
        missing[at[i + TYPE]]++;
        pieceArea -= terms.tally.area(at[i + TYPE]);
        end -= FIELDS;
        System.arraycopy(at, end, at, i, FIELDS);
        isStale = true;
    }

    /** Takes all pieces off that reach into the rectangle round two of them. */
    void removeAround(int first, int second, int[] missing) {
        int x0 = Math.min(x(first), x(second));
        int y0 = Math.min(y(first), y(second));
        int x1 = Math.max(endX(first), endX(second));
        int y1 = Math.max(endY(first), endY(second));
        for (int i = pieces() - 1; i >= 0; i--) {
            if (x(i) < x1 && endX(i) > x0 && y(i) < y1 && endY(i) > y0) {
                remove(i, missing);
            }
        }
    }

    private int x(int index) {
        return at[index * FIELDS + X];
    }

    private int y(int index) {
        return at[index * FIELDS + Y];
    }

    private int endX(int index) {
        int i = index * FIELDS;
        return at[i + X] + terms.along(at[i + TYPE], at[i + TURNED] == 1);
    }

    private int endY(int index) {
        int i = index * FIELDS;
        return at[i + Y] + terms.across(at[i + TYPE], at[i + TURNED] == 1);
    }

    void refresh() {
        if (isStale) {
            free.reset(length, width);
            for (int i = 0; i < pieces(); i++) {
                free.take(x(i), y(i), endX(i) - x(i), endY(i) - y(i));
            }
            isStale = false;
        }
    }

    /** Worth of its largest free rectangle. */
    @Override
    public double restValue() {
        double most = 0;
        for (int i = 0; i < free.count(); i++) {
            most = Math.max(most, terms.values.of(free.length(i), free.width(i)));
        }
        return most;
    }

    /** Area of its largest free rectangle as it lies in the workshop, units². */
    @Override
    public long largestRest() {
        long largest = 0;
        for (int i = 0; i < free.count(); i++) {
            largest = Math.max(largest, terms.rest(free.length(i), free.width(i)));
        }
        return largest;
    }

    FilledBoard filled() {
        var places = new ArrayList<Place>();
        for (int i = 0; i < end; i += FIELDS) {
            places.add(new Place(at[i + TYPE], at[i + X], at[i + Y], at[i + TURNED] == 1));
        }
        return new FilledBoard(kind, places, largestRest());
    }
}
