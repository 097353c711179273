package org.standwright.solid.layer;

/**
 * Whether a side passes through the square of one grid step around a spot, its left and lower edge included, its right
 * and upper edge not: so every point of the plane lies in one square.
 */
final class Passing {
    private final int ax;
    private final int ay;
    private final int bx;
    private final int by;
    private final long dx;
    private final long dy;

    Passing(int ax, int ay, int bx, int by) {
        this.ax = ax;
        this.ay = ay;
        this.bx = bx;
        this.by = by;
        dx = bx - ax;
        dy = by - ay;
    }

    boolean isThrough(int x, int y) {
        boolean inBox =
                x >= Math.min(ax, bx) && x <= Math.max(ax, bx) && y >= Math.min(ay, by) && y <= Math.max(ay, by);
        if (!inBox || dx == 0 || dy == 0) {
            return inBox;
        }
        // in half steps, so that the square's corners are whole numbers
        long left = 2L * (x - ax) - 1;
        long low = 2L * (y - ay) - 1;
        int lowLeft = side(left, low, 0);
        // a corner that is not part of the square stands for the points just inside of it
        int lowRight = side(left + 2, low, dy);
        int highLeft = side(left, low + 2, -dx);
        int highRight = side(left + 2, low + 2, dy - dx);
        return !(lowLeft > 0 && lowRight > 0 && highLeft > 0 && highRight > 0
                || lowLeft < 0 && lowRight < 0 && highLeft < 0 && highRight < 0);
    }

    /** Along the side, for sorting. */
    long along(int x, int y) {
        return dx * (x - ax) + dy * (y - ay);
    }

    private int side(long x, long y, long inwards) {
        long turn = dx * y - dy * x;
        return turn != 0 ? Long.signum(turn) : Long.signum(inwards);
    }
}
