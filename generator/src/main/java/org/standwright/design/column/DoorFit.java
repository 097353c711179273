package org.standwright.design.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.Content;
import org.standwright.design.Hung;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.kit.Side;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** The doors before one opening, and the heights of their hinges; all figures common practice, no source. */
final class DoorFit {
    /** A hinge stands this far from a shelf at least, mm. */
    static final double FROM_SHELF = 40;
    /** A hinge stands this far from the door's end, mm, or a fifth of a low door. */
    static final double FROM_END = 100;
    /** Doors up to these heights have two and three hinges, higher ones four, mm. */
    private static final double TWO_HINGES = 900;

    private static final double THREE_HINGES = 1600;

    private final Content.Door content;
    private final Rect opening;
    private final double panel;
    private final List<Double> shelves;

    /**
     * @param panel thickness of the shelves
     * @param shelves undersides of the fixed shelves above the opening's lower edge
     */
    DoorFit(Content.Door content, Rect opening, double panel, List<Double> shelves) {
        this.content = content;
        this.opening = opening;
        this.panel = panel;
        this.shelves = shelves;
    }

    /** One door on this area, or a pair with a gap between. */
    List<DoorLayout> doors(Rect area, double gap, List<String> names) {
        if (content.hung() != Hung.PAIR) {
            return List.of(door(names.get(0), area, content.hung() == Hung.LEFT ? Side.LEFT : Side.RIGHT));
        }
        double leaf = (area.width() - gap) / 2;
        return List.of(
                door(names.get(0), new Rect(area.x0(), area.y0(), area.x0() + leaf, area.y1()), Side.LEFT),
                door(names.get(1), new Rect(area.x1() - leaf, area.y0(), area.x1(), area.y1()), Side.RIGHT));
    }

    private DoorLayout door(String name, Rect front, Side hung) {
        double height = front.height();
        int count = height <= TWO_HINGES ? 2 : height <= THREE_HINGES ? 3 : 4;
        double end = Math.min(FROM_END, height / 5);
        var hinges = new ArrayList<Double>();
        for (int i = 0; i < count; i++) {
            double even = end + i * (height - 2 * end) / (count - 1);
            hinges.add(clear(front.y0() + even) - front.y0());
        }
        return new DoorLayout(name, front, hung, content.hinge(), hinges);
    }

    /** The nearest height within the opening that keeps off all shelves. */
    private double clear(double z) {
        double half = HingeSpan.half(content.hinge());
        double lowest = opening.y0() + half;
        double highest = opening.y1() - half;
        double wanted = Math.max(lowest, Math.min(highest, z));
        var beside = shelves.stream()
                .flatMap(shelf -> Stream.of(under(shelf) - FROM_SHELF, under(shelf) + panel + FROM_SHELF));
        return Stream.concat(Stream.of(wanted), beside)
                .filter(place -> !Grid.less(place, lowest) && !Grid.less(highest, place))
                .filter(this::isClear)
                .min(Comparator.comparingDouble(place -> Math.abs(place - wanted)))
                .orElse(wanted);
    }

    private boolean isClear(double z) {
        return shelves.stream()
                .flatMapToDouble(shelf -> DoubleStream.of(under(shelf)))
                .noneMatch(under -> Grid.less(under - FROM_SHELF, z) && Grid.less(z, under + panel + FROM_SHELF));
    }

    private double under(double shelf) {
        return opening.y0() + shelf;
    }
}
