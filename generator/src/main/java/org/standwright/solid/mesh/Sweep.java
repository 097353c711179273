package org.standwright.solid.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Cuts all faces of one plane, holes and islands included, into triangles in one sweep from left to right, after
 * Hertel and Mehlhorn. All decisions are exact. Loops may touch themselves and each other in corners.
 */
final class Sweep {
    private enum Kind {
        END,
        LOWER,
        UPPER,
        MERGE,
        SPLIT,
        START
    }

    private final Flat flat;
    private final int[] point;
    private final int[] next;
    private final int[] previous;
    private final Map<Integer, Funnel> byLower = new TreeMap<>();
    private final Map<Integer, Funnel> byUpper = new TreeMap<>();
    private final List<int[]> triangles = new ArrayList<>();

    private Sweep(List<int[]> loops, Flat flat) {
        this.flat = flat;
        int corners = loops.stream().mapToInt(loop -> loop.length).sum();
        point = new int[corners];
        next = new int[corners];
        previous = new int[corners];
        int start = 0;
        for (var loop : loops) {
            for (int i = 0; i < loop.length; i++) {
                point[start + i] = loop[i];
                next[start + i] = start + (i + 1) % loop.length;
                previous[start + (i + 1) % loop.length] = start + i;
            }
            start += loop.length;
        }
    }

    /** Triangles as point numbers, counter-clockwise, every one with an area. */
    static List<int[]> triangles(List<int[]> loops, Flat flat) {
        var sweep = new Sweep(loops, flat);
        sweep.run();
        Slivers.flip(sweep.triangles, sweep);
        sweep.check(loops);
        return sweep.triangles.stream()
                .map(triangle -> Arrays.stream(triangle)
                        .map(corner -> sweep.point[corner])
                        .toArray())
                .toList();
    }

    /** Twice the area of a triangle of corners. */
    long turn(int a, int b, int c) {
        return flat.turn(point[a], point[b], point[c]);
    }

    int compare(int a, int b) {
        return flat.compare(point[a], point[b]);
    }

    void emit(int a, int b, int c) {
        triangles.add(new int[] {a, b, c});
    }

    private void run() {
        var kinds = IntStream.range(0, point.length).mapToObj(this::kind).toArray(Kind[]::new);
        IntStream.range(0, point.length)
                .boxed()
                .sorted(((Comparator<Integer>) this::compare)
                        .thenComparing(corner -> kinds[corner])
                        .thenComparing(Comparator.naturalOrder()))
                .forEach(corner -> visit(corner, kinds[corner]));
        if (!byLower.isEmpty()) {
            throw new BrokenMeshException("a face does not close");
        }
    }

    private Kind kind(int corner) {
        boolean fromLeft = compare(previous[corner], corner) < 0;
        boolean toRight = compare(next[corner], corner) > 0;
        if (fromLeft == toRight) {
            return fromLeft ? Kind.LOWER : Kind.UPPER;
        }
        boolean convex = turn(previous[corner], corner, next[corner]) > 0;
        if (toRight) {
            return convex ? Kind.START : Kind.SPLIT;
        }
        return convex ? Kind.END : Kind.MERGE;
    }

    private void visit(int v, Kind kind) {
        switch (kind) {
            case START -> open(new Funnel(this, v, previous[v], v));
            case LOWER -> open(take(byLower, previous[v]).onBelow(v, v));
            case UPPER -> open(take(byUpper, v).onAbove(v, previous[v]));
            case SPLIT -> split(v);
            case MERGE -> open(take(byUpper, v).mergedAt(v, take(byLower, previous[v])));
            case END -> end(v);
        }
    }

    private void split(int v) {
        var around = byLower.values().stream()
                .filter(funnel -> isAbove(v, funnel.lower(), next[funnel.lower()])
                        && isAbove(v, funnel.upper(), next[funnel.upper()]))
                .findFirst()
                .orElseThrow(() -> new BrokenMeshException("a hole lies outside its face"));
        take(byLower, around.lower());
        open(around.below(v, previous[v]));
        open(around.above(v, v));
    }

    /** Whether {@code v} lies strictly to the left of the edge from {@code a} to {@code b}. */
    private boolean isAbove(int v, int a, int b) {
        return turn(a, b, v) > 0;
    }

    private void end(int v) {
        var last = take(byLower, previous[v]);
        if (last.upper() != v) {
            throw new BrokenMeshException("edges of a face cross");
        }
        last.close(v);
    }

    private void open(Funnel funnel) {
        byLower.put(funnel.lower(), funnel);
        byUpper.put(funnel.upper(), funnel);
    }

    private Funnel take(Map<Integer, Funnel> from, int edge) {
        var funnel =
                Optional.ofNullable(from.get(edge)).orElseThrow(() -> new BrokenMeshException("edges of a face cross"));
        byLower.remove(funnel.lower());
        byUpper.remove(funnel.upper());
        return funnel;
    }

    private void check(List<int[]> loops) {
        int expected = point.length;
        long loopArea = 0;
        for (var loop : loops) {
            long area = area(loop);
            loopArea += area;
            expected += area > 0 ? -2 : 2;
        }
        long covered = 0;
        for (var triangle : triangles) {
            long area = turn(triangle[0], triangle[1], triangle[2]);
            if (area <= 0) {
                throw new BrokenMeshException("a face folds over");
            }
            covered += area;
        }
        if (triangles.size() != expected || covered != loopArea) {
            throw new BrokenMeshException("a face is not covered by its triangles");
        }
    }

    private long area(int[] loop) {
        long area = 0;
        for (int i = 2; i < loop.length; i++) {
            area += flat.turn(loop[0], loop[i - 1], loop[i]);
        }
        return area;
    }
}
