package org.standwright.solid.mesh;

import java.util.HashMap;
import java.util.Map;

/** Moves all ends of edges to the nearest points of the grid; points that fall together become one. */
final class GridSnap {
    private record Key(long x, long y, long z) {}

    private final Map<Key, Integer> numbers = new HashMap<>();
    private final Points snapped = new Points();
    private final EdgeChain edges;

    GridSnap(EdgeChain chain, Points points) {
        var sum = new EdgeSum();
        for (int edge = 0; edge < chain.count(); edge++) {
            sum.add(chain.plane(edge), number(points, chain.from(edge)), number(points, chain.to(edge)));
        }
        edges = sum.total();
    }

    private int number(Points points, int point) {
        var key = new Key(Math.round(points.x(point)), Math.round(points.y(point)), Math.round(points.z(point)));
        return numbers.computeIfAbsent(key, at -> snapped.add(at.x, at.y, at.z));
    }

    EdgeChain edges() {
        return edges;
    }

    Points points() {
        return snapped;
    }
}
