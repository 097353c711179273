package org.standwright.solid.mesh.face;

import java.util.Arrays;

/**
 * The corners of all loops on one plane, numbered from 0, as the plane is seen square on: u to the right, v upwards, at
 * most 2^24 either way. Faces lie to the left.
 */
public final class Corners {
    private int[] points = new int[64];
    private int[] next = new int[64];
    private int[] previous = new int[64];
    private int[] us = new int[64];
    private int[] vs = new int[64];
    private int count;
    private int loopStart;

    /** Begins anew, without corners. */
    public void clear() {
        count = 0;
        loopStart = 0;
    }

    /**
     * The next corner of the loop at hand.
     *
     * @param point whatever number the caller knows it by
     */
    public void add(int point, int u, int v) {
        if (count == points.length) {
            grow();
        }
        points[count] = point;
        us[count] = u;
        vs[count] = v;
        next[count] = count + 1;
        previous[count] = count - 1;
        count++;
    }

    private void grow() {
        points = Arrays.copyOf(points, 2 * count);
        next = Arrays.copyOf(next, 2 * count);
        previous = Arrays.copyOf(previous, 2 * count);
        us = Arrays.copyOf(us, 2 * count);
        vs = Arrays.copyOf(vs, 2 * count);
    }

    /** The last corner was the last of its loop; the next one begins another. */
    public void closeLoop() {
        next[count - 1] = loopStart;
        previous[loopStart] = count - 1;
        loopStart = count;
    }

    int count() {
        return count;
    }

    /** The number that a corner was added with. */
    public int point(int corner) {
        return points[corner];
    }

    int next(int corner) {
        return next[corner];
    }

    int previous(int corner) {
        return previous[corner];
    }

    int u(int corner) {
        return us[corner];
    }

    int v(int corner) {
        return vs[corner];
    }

    /** Twice the area of a triangle of corners, more than 0 when it turns left. */
    long turn(int a, int b, int c) {
        return (long) (us[b] - us[a]) * (vs[c] - vs[a]) - (long) (vs[b] - vs[a]) * (us[c] - us[a]);
    }

    /** Order from left to right, then upwards. */
    int compare(int a, int b) {
        return us[a] != us[b] ? Integer.compare(us[a], us[b]) : Integer.compare(vs[a], vs[b]);
    }

    /** One past the last corner of the loop whose first is {@code start}. */
    int endOfLoop(int start) {
        return previous[start] + 1;
    }

    /** Twice the area inside the loop whose first corner is {@code start}, less than 0 for a hole. */
    long loopArea(int start) {
        long area = 0;
        for (int corner = start + 2; corner < endOfLoop(start); corner++) {
            area += turn(start, corner - 1, corner);
        }
        return area;
    }
}
