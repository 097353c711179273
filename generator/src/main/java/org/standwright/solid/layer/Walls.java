package org.standwright.solid.layer;

import java.util.Arrays;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Planes.Plane;
import org.standwright.solid.mesh.Shell;

/** Reads the surface from the layers on both sides of every piece: walls above the pieces, level faces beside them. */
final class Walls {
    private static final int NONE = -1;

    private final Arrangement rings;
    private final Pieces pieces;
    private final Solidity solidity;
    private final int[] levels;
    private final Planes planes;
    private final Shell shell;
    /** Bit k of a spot's is set when there is a point of the surface over it at the k-th level. */
    private final long[] used;

    private final int[] points;
    private final int[] ups;
    private final int[] downs;

    Walls(Arrangement rings, Solidity solidity, int[] levels, Planes planes, Shell shell) {
        this.rings = rings;
        this.solidity = solidity;
        this.levels = levels;
        this.planes = planes;
        this.shell = shell;
        pieces = rings.pieces();
        used = new long[rings.spots().count()];
        points = new int[used.length * levels.length];
        ups = new int[levels.length];
        downs = new int[levels.length];
        Arrays.fill(ups, NONE);
        Arrays.fill(downs, NONE);
    }

    void add() {
        for (int piece = 0; piece < pieces.count(); piece++) {
            long ends = ends(towardsLeft(piece)) | ends(towardsRight(piece));
            used[pieces.from(piece)] |= ends;
            used[pieces.to(piece)] |= ends;
        }
        for (int piece = 0; piece < pieces.count(); piece++) {
            if (solidity.left(piece) != solidity.right(piece)) {
                int from = pieces.from(piece);
                int to = pieces.to(piece);
                walls(piece, from, to, towardsLeft(piece), true);
                walls(piece, to, from, towardsRight(piece), false);
                levels(piece, true);
                levels(piece, false);
            }
        }
    }

    /** The layers in which a piece bears a wall that looks to its left. */
    private long towardsLeft(int piece) {
        return solidity.right(piece) & ~solidity.left(piece);
    }

    private long towardsRight(int piece) {
        return solidity.left(piece) & ~solidity.right(piece);
    }

    /** The levels at which runs of layers begin and end. */
    private static long ends(long layers) {
        return layers << 1 ^ layers;
    }

    /** Walls that look to the left on the way from a spot to the next. */
    private void walls(int piece, int a, int b, long layers, boolean forward) {
        if (layers == 0) {
            return;
        }
        int plane = planes.number(plane(piece, forward));
        for (long rest = layers; rest != 0; ) {
            int low = Long.numberOfTrailingZeros(rest);
            int high = low + Long.numberOfTrailingZeros(~(rest >>> low));
            shell.edge(plane, point(b, low), point(a, low));
            shell.edge(plane, point(a, high), point(b, high));
            upright(plane, a, low, high, true);
            upright(plane, b, low, high, false);
            rest &= high == Long.SIZE ? 0 : -1L << high;
        }
    }

    /** An upright edge, broken wherever there is a point on it. */
    private void upright(int plane, int spot, int low, int high, boolean up) {
        int from = low;
        for (int k = low + 1; k <= high; k++) {
            if ((used[spot] >>> k & 1) != 0) {
                shell.edge(plane, point(spot, up ? from : k), point(spot, up ? k : from));
                from = k;
            }
        }
    }

    /** Level faces beside a piece: floors look up where layers end, ceilings down where they begin. */
    private void levels(int piece, boolean up) {
        long left = faces(solidity.left(piece), up);
        long right = faces(solidity.right(piece), up);
        for (long rest = left ^ right; rest != 0; rest &= rest - 1) {
            int k = Long.numberOfTrailingZeros(rest);
            int from = point(pieces.from(piece), k);
            int to = point(pieces.to(piece), k);
            // seen from below, left is right
            boolean forward = (left >>> k & 1) != 0 == up;
            shell.edge(level(k, up), forward ? from : to, forward ? to : from);
        }
    }

    private static long faces(long layers, boolean up) {
        return up ? layers << 1 & ~layers : layers & ~(layers << 1);
    }

    private int level(int k, boolean up) {
        var known = up ? ups : downs;
        if (known[k] == NONE) {
            known[k] = planes.number(Plane.level(levels[k], up ? 1 : -1));
        }
        return known[k];
    }

    /**
     * The plane of the side that a piece lies on, facing to the left of the piece or to its right; or its own, if it has
     * been bent so far from its side that the side's plane sees it from behind or from its end.
     */
    private Plane plane(int piece, boolean toLeft) {
        int step = pieces.newest(piece);
        var ring = rings.ring(rings.ringOf(step));
        int side = rings.side(step);
        int next = ring.next(side);
        boolean same = rings.from(step) == pieces.from(piece);
        int dx = ring.u(next) - ring.u(side);
        int dy = ring.v(next) - ring.v(side);
        int from = same ? pieces.from(piece) : pieces.to(piece);
        int to = same ? pieces.to(piece) : pieces.from(piece);
        var spots = rings.spots();
        boolean steep = Math.abs(dy) > Math.abs(dx);
        long ahead = steep ? (long) dy * (spots.y(to) - spots.y(from)) : (long) dx * (spots.x(to) - spots.x(from));
        if (ahead > 0) {
            return facing(ring.u(side), ring.v(side), ring.u(next), ring.v(next), same == toLeft);
        }
        return facing(spots.x(from), spots.y(from), spots.x(to), spots.y(to), same == toLeft);
    }

    /** Upright, through two points, facing to the left of the way from the first to the second or to its right. */
    private static Plane facing(int ax, int ay, int bx, int by, boolean toLeft) {
        return toLeft ? Plane.upright(bx, by, ax, ay) : Plane.upright(ax, ay, bx, by);
    }

    private int point(int spot, int level) {
        int at = spot * levels.length + level;
        if (points[at] == 0) {
            points[at] = 1 + shell.point(rings.spots().x(spot), rings.spots().y(spot), levels[level]);
        }
        return points[at] - 1;
    }
}
