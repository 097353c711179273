package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Stud;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.unit.Units;

/** Chains of dimensions of one wall: studs, obstacles and corners, and the whole. */
record WallSpans(CleatedWall wall, Units units, Scale scale) {
    /** Obstacles lower than this on paper would crowd the heights, mm. */
    private static final double LEAST = 5;

    /** Between the centres of studs, and to the ends of the wall. */
    List<Span> studs() {
        return chain(bounds().x0(), bounds().x1(), wall.studs().stream().mapToDouble(Stud::x));
    }

    /** Where obstacles and corners are along the wall; nothing where there are none. */
    List<Span> places() {
        return unlessWhole(chain(
                bounds().x0(),
                bounds().x1(),
                DoubleStream.concat(
                        wall.zones().stream()
                                .flatMapToDouble(zone -> DoubleStream.of(
                                        zone.itself().x0(), zone.itself().x1())),
                        corners().mapToDouble(Vec2::x))));
    }

    /** Where obstacles and corners are above the floor, low obstacles left out; nothing where there are none. */
    List<Span> heights() {
        return unlessWhole(chain(
                bounds().y0(),
                bounds().y1(),
                DoubleStream.concat(
                        wall.zones().stream()
                                .filter(zone -> scale.paper(zone.itself().height()) >= LEAST)
                                .flatMapToDouble(zone -> DoubleStream.of(
                                        zone.itself().y0(), zone.itself().y1())),
                        corners().mapToDouble(Vec2::y))));
    }

    List<Span> wholeWidth() {
        return chain(bounds().x0(), bounds().x1(), DoubleStream.empty());
    }

    List<Span> wholeHeight() {
        return chain(bounds().y0(), bounds().y1(), DoubleStream.empty());
    }

    private Stream<Vec2> corners() {
        return wall.outline().corners().stream();
    }

    private Rect bounds() {
        return wall.outline().bounds();
    }

    private static List<Span> unlessWhole(List<Span> chain) {
        return chain.size() == 1 ? List.of() : chain;
    }

    private List<Span> chain(double from, double to, DoubleStream between) {
        var spans = new ArrayList<Span>();
        double last = from;
        var places = DoubleStream.concat(between, DoubleStream.of(to)).sorted().toArray();
        for (double place : places) {
            if (Grid.less(last, place) && !Grid.less(to, place)) {
                spans.add(new Span(scale.paper(last), scale.paper(place), units.bareLength(place - last)));
                last = place;
            }
        }
        return spans;
    }
}
