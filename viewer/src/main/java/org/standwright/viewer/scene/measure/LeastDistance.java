package org.standwright.viewer.scene.measure;

import java.util.List;

/**
 * The shortest way between two sets of triangles. Between two triangles it runs from side to side or from a corner to the
 * inside of the other, unless a side of one goes through the other.
 */
final class LeastDistance {
    private Segment shortest;
    private double length = Double.POSITIVE_INFINITY;

    private LeastDistance() {}

    /** From a point of the first to one of the second; of several as short, the first that is found. */
    static Segment between(List<Triangle> first, List<Triangle> second) {
        var search = new LeastDistance();
        var boxes = second.stream().map(Triangle::box).toList();
        for (var triangle : first) {
            var box = triangle.box();
            for (int i = 0; i < boxes.size() && search.length > 0; i++) {
                if (-box.overlap(boxes.get(i)) < search.length) {
                    search.pair(triangle, second.get(i));
                }
            }
        }
        return search.shortest;
    }

    private void pair(Triangle a, Triangle b) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                offer(a.side(i).nearest(b.side(j)));
            }
        }
        for (int i = 0; i < 3; i++) {
            cornerOver(new Segment(a.corner(i), b.foot(a.corner(i))), b);
            cornerOver(new Segment(b.corner(i), a.foot(b.corner(i))).reversed(), a);
            a.side(i).through(b).ifPresent(at -> offer(new Segment(at, at)));
            b.side(i).through(a).ifPresent(at -> offer(new Segment(at, at)));
        }
    }

    private void cornerOver(Segment way, Triangle triangle) {
        if (triangle.covers(triangle.foot(way.middle()))) {
            offer(way);
        }
    }

    private void offer(Segment way) {
        if (way.length() < length) {
            shortest = way;
            length = way.length();
        }
    }
}
