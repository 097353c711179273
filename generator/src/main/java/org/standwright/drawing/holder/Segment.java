package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;

/** A straight piece of an edge as it is seen, mm of the real thing. */
record Segment(Vec2 from, Vec2 to) {
    Vec2 at(double share) {
        return from.plus(to.minus(from).times(share));
    }

    Vec2 middle() {
        return at(0.5);
    }

    double length() {
        return to.minus(from).length();
    }

    boolean isEmpty() {
        return length() <= Grid.STEP;
    }

    /** A point beside its middle, {@code aside} to the left. */
    Vec2 beside(double aside) {
        var along = to.minus(from).times(1 / length());
        return middle().plus(new Vec2(-along.y(), along.x()).times(aside));
    }

    /** Cut wherever it meets one of the others or runs along it from or to an end. */
    List<Segment> cutBy(List<Segment> others) {
        var cuts = others.stream()
                .flatMapToDouble(this::meetings)
                .filter(share -> share > 0 && share < 1)
                .sorted()
                .toArray();
        var pieces = new ArrayList<Segment>();
        double last = 0;
        for (double cut :
                DoubleStream.concat(DoubleStream.of(cuts), DoubleStream.of(1)).toArray()) {
            var piece = new Segment(at(last), at(cut));
            if (!piece.isEmpty()) {
                pieces.add(piece);
                last = cut;
            }
        }
        return pieces;
    }

    private DoubleStream meetings(Segment other) {
        if (isInLineWith(other)) {
            return DoubleStream.of(share(other.from), share(other.to));
        }
        var along = to.minus(from);
        var across = other.to.minus(other.from);
        double sine = along.cross(across);
        if (Math.abs(sine) <= Grid.STEP) {
            return DoubleStream.empty();
        }
        double there = other.from.minus(from).cross(along) / sine;
        return there < -Grid.STEP || there > 1 + Grid.STEP
                ? DoubleStream.empty()
                : DoubleStream.of(other.from.minus(from).cross(across) / sine);
    }

    /** What none of the others covers. */
    List<Segment> without(List<Segment> others) {
        var left = List.of(this);
        for (var other : others) {
            if (isInLineWith(other)) {
                left = left.stream()
                        .flatMap(piece -> piece.less(other).stream())
                        .toList();
            }
        }
        return left;
    }

    private List<Segment> less(Segment other) {
        double a = Math.min(share(other.from), share(other.to));
        double b = Math.max(share(other.from), share(other.to));
        if (b <= 0 || a >= 1) {
            return List.of(this);
        }
        return List.of(new Segment(from, at(Math.max(0, a))), new Segment(at(Math.min(1, b)), to)).stream()
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private boolean isInLineWith(Segment other) {
        return distance(other.from) <= Grid.STEP && distance(other.to) <= Grid.STEP;
    }

    /** Of a point from the line through this segment. */
    private double distance(Vec2 point) {
        return Math.abs(to.minus(from).cross(point.minus(from))) / length();
    }

    /** Where along it a point of its line lies: 0 at its start, 1 at its end. */
    private double share(Vec2 point) {
        var along = to.minus(from);
        var on = point.minus(from);
        return (on.x() * along.x() + on.y() * along.y()) / (along.length() * along.length());
    }
}
