package org.standwright.solid.mesh.face;

import java.util.Arrays;

/**
 * The parts of the faces of one plane that the sweep has reached but not yet cut into triangles. Each funnel lies
 * between two edges, told by the corner that each starts at, and is bounded on the left by a chain of corners from the
 * lower edge up to the upper one that bulges to the right. A chain is a list of links, for a corner may be in two.
 */
final class Funnels {
    private static final int NONE = -1;

    private final Corners corners;
    private final Cover cover;
    /** By edge: the funnel above it, and the one below. */
    private final int[] byLower;

    private final int[] byUpper;
    /** By funnel. */
    private final int[] lower;

    private final int[] upper;
    /** By funnel: the ends of its chain, and the link that was joined last, which is the rightmost. */
    private final int[] bottom;

    private final int[] top;
    private final int[] latest;
    /** The funnels that have not ended, and by funnel its place among them. */
    private final int[] active;

    private final int[] place;
    private int activeCount;
    private int funnelCount;
    /** By link. */
    private final int[] corner;

    private final int[] above;
    private final int[] below;
    private int linkCount;

    Funnels(Corners corners, Cover cover) {
        this.corners = corners;
        this.cover = cover;
        int n = corners.count();
        byLower = new int[n];
        byUpper = new int[n];
        Arrays.fill(byLower, NONE);
        Arrays.fill(byUpper, NONE);
        // every second corner of a loop at most opens a funnel, and joins three links instead of one
        int most = n / 2 + 1;
        lower = new int[most];
        upper = new int[most];
        bottom = new int[most];
        top = new int[most];
        latest = new int[most];
        active = new int[most];
        place = new int[most];
        corner = new int[2 * n];
        above = new int[2 * n];
        below = new int[2 * n];
    }

    boolean areAllClosed() {
        return activeCount == 0;
    }

    /** A face begins in corner {@code v}, where both its edges start to the right. */
    void start(int v) {
        int funnel = fresh();
        int link = link(v);
        bottom[funnel] = link;
        top[funnel] = link;
        latest[funnel] = link;
        layOn(funnel, v);
        hangFrom(funnel, corners.previous(v));
    }

    /** A lower edge has ended in corner {@code v}, where the next goes on. */
    void goOnBelow(int v) {
        int funnel = take(byLower, corners.previous(v));
        joinBelow(funnel, v);
        layOn(funnel, v);
    }

    /** An upper edge has ended in corner {@code v}, where the next goes on. */
    void goOnAbove(int v) {
        int funnel = take(byUpper, v);
        joinAbove(funnel, v);
        hangFrom(funnel, corners.previous(v));
    }

    /** Corner {@code v} inside a face, from which two edges run on to the right, parts a funnel in two. */
    void split(int v) {
        int low = around(v);
        int high = fresh();
        int link = latest[low];
        int twin = link(corner[link]);
        hangFrom(high, upper[low]);
        put(twin, above[link]);
        top[high] = above[link] == NONE ? twin : top[low];
        bottom[high] = twin;
        top[low] = link;
        above[link] = NONE;
        joinAbove(low, v);
        hangFrom(low, corners.previous(v));
        joinBelow(high, v);
        layOn(high, v);
    }

    /** The edges between two funnels have ended in corner {@code v}. */
    void merge(int v) {
        int low = take(byUpper, v);
        int high = take(byLower, corners.previous(v));
        if (low == high) {
            throw new BrokenFaceException("edges of a face cross");
        }
        joinAbove(low, v);
        joinBelow(high, v);
        put(top[low], above[bottom[high]]);
        top[low] = top[high];
        hangFrom(low, upper[high]);
        drop(high);
    }

    /** Both edges of a funnel have ended in corner {@code v}. Triangles of no area may come of this. */
    void end(int v) {
        int funnel = take(byLower, corners.previous(v));
        if (upper[funnel] != v) {
            throw new BrokenFaceException("edges of a face cross");
        }
        for (int link = bottom[funnel]; above[link] != NONE; link = above[link]) {
            int a = corner[link];
            int b = corner[above[link]];
            cover.add(a, v, b, corners.turn(a, v, b));
        }
        drop(funnel);
    }

    private void joinBelow(int funnel, int v) {
        int link = bottom[funnel];
        while (above[link] != NONE && isSeen(corner[link], v, corner[above[link]])) {
            link = above[link];
        }
        int joined = link(v);
        put(joined, link);
        bottom[funnel] = joined;
        latest[funnel] = joined;
    }

    private void joinAbove(int funnel, int v) {
        int link = top[funnel];
        while (below[link] != NONE && isSeen(corner[below[link]], v, corner[link])) {
            link = below[link];
        }
        int joined = link(v);
        put(link, joined);
        top[funnel] = joined;
        latest[funnel] = joined;
    }

    /** Cuts off the triangle if {@code v} sees the side of the chain from {@code a} to {@code b} from within. */
    private boolean isSeen(int a, int v, int b) {
        long turn = corners.turn(a, v, b);
        if (turn > 0) {
            cover.add(a, v, b, turn);
        }
        return turn > 0;
    }

    /** The funnel with {@code v} strictly between its edges. */
    private int around(int v) {
        for (int i = 0; i < activeCount; i++) {
            if (isLeft(v, lower[active[i]]) && isLeft(v, upper[active[i]])) {
                return active[i];
            }
        }
        throw new BrokenFaceException("a hole lies outside its face");
    }

    private boolean isLeft(int v, int edge) {
        return corners.turn(edge, corners.next(edge), v) > 0;
    }

    private int fresh() {
        int funnel = funnelCount++;
        place[funnel] = activeCount;
        active[activeCount++] = funnel;
        return funnel;
    }

    private void drop(int funnel) {
        int last = active[--activeCount];
        active[place[funnel]] = last;
        place[last] = place[funnel];
    }

    private static int take(int[] from, int edge) {
        int funnel = from[edge];
        if (funnel == NONE) {
            throw new BrokenFaceException("edges of a face cross");
        }
        from[edge] = NONE;
        return funnel;
    }

    private void layOn(int funnel, int edge) {
        lower[funnel] = edge;
        byLower[edge] = funnel;
    }

    private void hangFrom(int funnel, int edge) {
        upper[funnel] = edge;
        byUpper[edge] = funnel;
    }

    private int link(int v) {
        corner[linkCount] = v;
        above[linkCount] = NONE;
        below[linkCount] = NONE;
        return linkCount++;
    }

    /** Makes {@code high} follow {@code low} in a chain. */
    private void put(int low, int high) {
        above[low] = high;
        if (high != NONE) {
            below[high] = low;
        }
    }
}
