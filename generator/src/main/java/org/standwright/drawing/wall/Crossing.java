package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;

/** Where an upright or level line runs within an outline. */
final class Crossing {
    private Crossing() {}

    /** Heights between which the upright line at {@code x} lies within, from the lowest. */
    static List<Interval> upright(Outline outline, double x) {
        return of(outline, x, Vec2::x, Vec2::y);
    }

    /** Places between which the level line at {@code y} lies within, from the left. */
    static List<Interval> level(Outline outline, double y) {
        return of(outline, y, Vec2::y, Vec2::x);
    }

    private static List<Interval> of(
            Outline outline, double at, ToDoubleFunction<Vec2> across, ToDoubleFunction<Vec2> along) {
        var cuts = new ArrayList<Double>();
        for (int i = 0; i < outline.corners().size(); i++) {
            var a = outline.corner(i);
            var b = outline.corner(i + 1);
            double from = across.applyAsDouble(a);
            double to = across.applyAsDouble(b);
            if (from <= at != to <= at) {
                double share = (at - from) / (to - from);
                cuts.add(along.applyAsDouble(a) + share * (along.applyAsDouble(b) - along.applyAsDouble(a)));
            }
        }
        cuts.sort(null);
        var within = new ArrayList<Interval>();
        for (int i = 0; i + 1 < cuts.size(); i += 2) {
            within.add(new Interval(cuts.get(i), cuts.get(i + 1)));
        }
        return within;
    }
}
