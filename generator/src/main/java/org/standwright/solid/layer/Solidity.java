package org.standwright.solid.layer;

/**
 * Which layers of the board are left on both sides of every piece of an arrangement: bit i stands for the i-th layer
 * from below.
 *
 * <p>A ring goes round a point as often as it crosses a ray from there upwards less downwards. Along a ring the layers
 * on both sides stay what they were until another ring comes in, so few pieces need a ray.
 */
final class Solidity {
    private final Arrangement rings;
    private final Pieces pieces;
    private final Spots spots;
    private final Slices slices;
    private final long[] left;
    private final long[] right;
    private final boolean[] known;
    private final int[] degrees;
    private final int[] hither;
    private final int[] beyond;

    Solidity(Arrangement rings, Slices slices) {
        this.rings = rings;
        this.slices = slices;
        pieces = rings.pieces();
        spots = rings.spots();
        left = new long[pieces.count()];
        right = new long[pieces.count()];
        known = new boolean[pieces.count()];
        degrees = degrees(pieces, spots.count());
        hither = new int[rings.ringCount()];
        beyond = new int[rings.ringCount()];
        for (int ring = 0; ring < rings.ringCount(); ring++) {
            follow(ring);
        }
    }

    /** To the left of a piece on the way from its first spot to its second. */
    long left(int piece) {
        return left[piece];
    }

    long right(int piece) {
        return right[piece];
    }

    private static int[] degrees(Pieces pieces, int spots) {
        var degrees = new int[spots];
        for (int piece = 0; piece < pieces.count(); piece++) {
            degrees[pieces.from(piece)]++;
            degrees[pieces.to(piece)]++;
        }
        return degrees;
    }

    private void follow(int ring) {
        for (int step = rings.firstStep(ring); step < rings.endOfSteps(ring); step++) {
            int piece = rings.piece(step);
            if (!known[piece]) {
                int before = step == rings.firstStep(ring) ? piece : rings.piece(step - 1);
                if (known[before] && isAlone(step, piece, before)) {
                    left[piece] = left[before];
                    right[piece] = right[before];
                } else {
                    look(piece);
                }
                known[piece] = true;
            }
        }
    }

    /** Whether nothing but this ring comes by between the two pieces. */
    private boolean isAlone(int step, int piece, int before) {
        return degrees[rings.from(step)] == 2 && pieces.isPlain(piece) && pieces.isPlain(before);
    }

    private void look(int piece) {
        int from = pieces.from(piece);
        int to = pieces.to(piece);
        boolean level = spots.y(from) == spots.y(to);
        for (int ring = 0; ring < hither.length; ring++) {
            hither[ring] = windings(ring, piece, level);
            beyond[ring] = hither[ring];
        }
        for (int step = pieces.newest(piece); step >= 0; step = pieces.older(step)) {
            boolean same = rings.from(step) == from;
            beyond[rings.ringOf(step)] += same == isTurningLeft(from, to, level) ? 1 : -1;
        }
        // the ray starts to the right of the piece, or above it if it is level
        boolean turning = isTurningLeft(from, to, level);
        left[piece] = slices.left(turning ? beyond : hither);
        right[piece] = slices.left(turning ? hither : beyond);
    }

    /** Whether the far side from the ray lies to the left on the way. */
    private boolean isTurningLeft(int from, int to, boolean level) {
        return level ? spots.x(to) < spots.x(from) : spots.y(to) > spots.y(from);
    }

    /** How often a ring goes round the points next to the middle of a piece, on its right side or above it. */
    private int windings(int ring, int piece, boolean level) {
        int x = spots.x(pieces.from(piece)) + spots.x(pieces.to(piece));
        int y = spots.y(pieces.from(piece)) + spots.y(pieces.to(piece));
        var box = rings.ring(ring);
        if (x < 2 * box.minU() || x > 2 * box.maxU() || y < 2 * box.minV() || y > 2 * box.maxV()) {
            return 0;
        }
        int windings = 0;
        int end = rings.endOfSteps(ring);
        int a = rings.from(end - 1);
        for (int step = rings.firstStep(ring); step < end; step++) {
            int b = rings.from(step);
            windings += level
                    ? -across(y, x, spots.y(a), spots.x(a), spots.y(b), spots.x(b))
                    : across(x, y, spots.x(a), spots.y(a), spots.x(b), spots.y(b));
            a = b;
        }
        return windings;
    }

    /**
     * 1 for a step that crosses the ray in the direction of x upwards, -1 downwards, 0 for none or if the ray's start
     * lies on it; (x, y) is doubled.
     */
    private static int across(int x, int y, int ax, int ay, int bx, int by) {
        boolean up = 2 * ay <= y && 2 * by > y;
        boolean down = 2 * by <= y && 2 * ay > y;
        if (!up && !down) {
            return 0;
        }
        long turn = (long) (bx - ax) * (y - 2 * ay) - (long) (by - ay) * (x - 2 * ax);
        return up ? (turn > 0 ? 1 : 0) : turn < 0 ? -1 : 0;
    }
}
