package org.standwright.design.top;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Rect;

/** Looks for the nearest place where one or more rectangles, shifted together, meet nothing that is taken. */
final class FreeSpot {
    private final Rect within;
    private final List<Taken> taken;

    /**
     * @param within the area that the rectangles have to stay in
     */
    FreeSpot(Rect within, List<Taken> taken) {
        this.within = within;
        this.taken = List.copyOf(taken);
    }

    boolean isFree(Rect body) {
        return Taken.within(within, body) && taken.stream().noneMatch(other -> other.meets(body));
    }

    /** The least shift along one axis; along both where one does not do. The nearest place touches what it clears. */
    Optional<Point2> shift(List<Rect> bodies) {
        var x = candidates(bodies, Rect::x0, Rect::x1);
        var y = candidates(bodies, Rect::y0, Rect::y1);
        return nearest(
                        bodies,
                        Stream.concat(
                                x.stream().map(dx -> new Point2(dx, 0)),
                                y.stream().map(dy -> new Point2(0, dy))))
                .or(() -> nearest(bodies, x.stream().flatMap(dx -> y.stream().map(dy -> new Point2(dx, dy)))));
    }

    private Optional<Point2> nearest(List<Rect> bodies, Stream<Point2> shifts) {
        return shifts.sorted(Comparator.comparingDouble(shift -> Math.abs(shift.x()) + Math.abs(shift.y())))
                .filter(shift ->
                        bodies.stream().map(body -> shifted(body, shift)).allMatch(this::isFree))
                .findFirst();
    }

    /** Shifts along one axis that bring an edge of a rectangle against an edge of something taken, or of the area. */
    private TreeSet<Double> candidates(List<Rect> bodies, ToDoubleFunction<Rect> lower, ToDoubleFunction<Rect> upper) {
        var shifts = new TreeSet<Double>();
        for (var body : bodies) {
            double from = lower.applyAsDouble(body);
            double to = upper.applyAsDouble(body);
            shifts.add(lower.applyAsDouble(within) - from);
            shifts.add(upper.applyAsDouble(within) - to);
            for (var other : taken) {
                shifts.add(lower.applyAsDouble(other.area()) - to);
                shifts.add(upper.applyAsDouble(other.area()) - from);
            }
        }
        return shifts;
    }

    static Rect shifted(Rect body, Point2 shift) {
        return new Rect(body.x0() + shift.x(), body.y0() + shift.y(), body.x1() + shift.x(), body.y1() + shift.y());
    }
}
