package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * The boundaries of faces as directed edges, each with the number of its face's plane; faces lie to the left. The
 * faces of a closed solid hold every edge as often in one direction as in the other.
 */
final class Edges {
    private int[] planes;
    private int[] from;
    private int[] to;
    private int count;

    Edges(int capacity) {
        planes = new int[capacity];
        from = new int[capacity];
        to = new int[capacity];
    }

    /** Adds an edge, unless it has no length. */
    void add(int plane, int start, int end) {
        if (start == end) {
            return;
        }
        if (count == planes.length) {
            grow();
        }
        set(count++, plane, start, end);
    }

    private void grow() {
        int capacity = 2 * count + 1;
        planes = Arrays.copyOf(planes, capacity);
        from = Arrays.copyOf(from, capacity);
        to = Arrays.copyOf(to, capacity);
    }

    private void set(int edge, int plane, int start, int end) {
        planes[edge] = plane;
        from[edge] = start;
        to[edge] = end;
    }

    int count() {
        return count;
    }

    int plane(int edge) {
        return planes[edge];
    }

    int from(int edge) {
        return from[edge];
    }

    int to(int edge) {
        return to[edge];
    }

    /** One past the last edge that stands together with edge {@code start} and is on its plane. */
    int endOfPlane(int start) {
        int end = start + 1;
        while (end < count && planes[end] == planes[start]) {
            end++;
        }
        return end;
    }

    /** The same edges between other points; those lose themselves that end where they start. */
    Edges renumbered(int[] points) {
        var renumbered = new Edges(count);
        for (int edge = 0; edge < count; edge++) {
            renumbered.add(planes[edge], points[from[edge]], points[to[edge]]);
        }
        return renumbered;
    }

    /** The edges from {@code start} to {@code end}. */
    Edges between(int start, int end) {
        var between = new Edges(end - start);
        for (int edge = start; edge < end; edge++) {
            between.add(planes[edge], from[edge], to[edge]);
        }
        return between;
    }

    /** These and others, sorted by plane if these are. */
    Edges with(Edges others) {
        if (others.count == 0) {
            return this;
        }
        var all = new Edges(count + others.count);
        all.addAll(this);
        all.addAll(others);
        return all.byPlane();
    }

    private void addAll(Edges others) {
        for (int edge = 0; edge < others.count; edge++) {
            set(count++, others.planes[edge], others.from[edge], others.to[edge]);
        }
    }

    /** The same edges sorted by plane; those of one plane stay in order. */
    Edges byPlane() {
        var next = new int[planeBound() + 1];
        for (int edge = 0; edge < count; edge++) {
            next[planes[edge] + 1]++;
        }
        for (int plane = 1; plane < next.length; plane++) {
            next[plane] += next[plane - 1];
        }
        var sorted = new Edges(count);
        sorted.count = count;
        for (int edge = 0; edge < count; edge++) {
            sorted.set(next[planes[edge]]++, planes[edge], from[edge], to[edge]);
        }
        return sorted;
    }

    private int planeBound() {
        int bound = 0;
        for (int edge = 0; edge < count; edge++) {
            bound = Math.max(bound, planes[edge] + 1);
        }
        return bound;
    }
}
