package org.standwright.solid.mesh.face;

import java.util.Arrays;

/**
 * Cuts all faces of one plane, holes and islands included, into triangles in one sweep from left to right, after
 * Hertel and Mehlhorn. All decisions are exact. Loops may touch themselves and each other in corners.
 */
final class Sweep {
    private static final int KIND_BITS = 3;

    /** What happens at a corner; of several in one place, what ends comes before what begins. */
    private enum Kind {
        END,
        LOWER,
        UPPER,
        MERGE,
        SPLIT,
        START
    }

    private final Corners corners;
    private final Kind[] kinds;
    private final Funnels funnels;

    private Sweep(Corners corners, Cover cover) {
        this.corners = corners;
        kinds = new Kind[corners.count()];
        funnels = new Funnels(corners, cover);
    }

    /** Three corners to each triangle. */
    static int[] triangles(Corners corners) {
        int triangles = corners.count();
        long area = 0;
        for (int start = 0; start < corners.count(); start = corners.endOfLoop(start)) {
            long inside = corners.loopArea(start);
            triangles += inside > 0 ? -2 : 2;
            area += inside;
        }
        var cover = new Cover(corners, triangles);
        new Sweep(corners, cover).run();
        return cover.finished(area);
    }

    private void run() {
        for (int corner = 0; corner < kinds.length; corner++) {
            kinds[corner] = kind(corner);
        }
        for (long key : inOrder()) {
            visit((int) key);
        }
        if (!funnels.areAllClosed()) {
            throw new BrokenFaceException("a face does not close");
        }
    }

    /** Corners, each in the low half of a key, from left to right, then upwards, then by kind. */
    private long[] inOrder() {
        var keys = new long[kinds.length];
        for (int corner = 0; corner < keys.length; corner++) {
            keys[corner] = (long) corners.u(corner) << Integer.SIZE | corner;
        }
        keys = RadixSort.byUpperHalf(keys);
        for (int start = 0; start < keys.length; ) {
            int end = start + 1;
            while (end < keys.length && keys[end] >> Integer.SIZE == keys[start] >> Integer.SIZE) {
                end++;
            }
            if (end - start > 1) {
                sortUpwards(keys, start, end);
            }
            start = end;
        }
        return keys;
    }

    private void sortUpwards(long[] keys, int start, int end) {
        for (int i = start; i < end; i++) {
            int corner = (int) keys[i];
            long first = (long) corners.v(corner) << KIND_BITS | kinds[corner].ordinal();
            keys[i] = first << Integer.SIZE | corner;
        }
        Arrays.sort(keys, start, end);
    }

    private Kind kind(int corner) {
        int previous = corners.previous(corner);
        int next = corners.next(corner);
        boolean fromLeft = corners.compare(previous, corner) < 0;
        boolean toRight = corners.compare(next, corner) > 0;
        if (fromLeft == toRight) {
            return fromLeft ? Kind.LOWER : Kind.UPPER;
        }
        boolean convex = corners.turn(previous, corner, next) > 0;
        if (toRight) {
            return convex ? Kind.START : Kind.SPLIT;
        }
        return convex ? Kind.END : Kind.MERGE;
    }

    private void visit(int corner) {
        switch (kinds[corner]) {
            case START -> funnels.start(corner);
            case LOWER -> funnels.goOnBelow(corner);
            case UPPER -> funnels.goOnAbove(corner);
            case SPLIT -> funnels.split(corner);
            case MERGE -> funnels.merge(corner);
            case END -> funnels.end(corner);
        }
    }
}
