package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;

/** All walls with nothing hung. Walls and rows count from 0 here. */
final class EmptyWalls {
    private final List<CleatedWall> walls;
    private final Cleat cleat;
    private final double deepest;
    private final double shallowest;
    private final Interval reach;
    private final Interval core;
    private final Surroundings surroundings;
    private final List<List<Runs>> runs;
    private final List<List<Obstruction>> fixed;
    private final List<List<Obstruction>> hot;

    /** Holders that are alike, by their place in the design. */
    private final List<Integer> shapes;

    /** What was worked out before, by shape, wall and row. */
    private final Map<List<Integer>, List<Interval>> places = new HashMap<>();

    EmptyWalls(List<CleatedWall> walls, Cleat cleat, List<ToHang> all) {
        this.walls = walls;
        this.cleat = cleat;
        deepest = all.stream().mapToDouble(ToHang::depth).max().orElse(0);
        shallowest = all.stream().mapToDouble(ToHang::depth).min().orElse(0);
        reach = new Interval(least(all, any -> any.low(0)), -least(all, any -> -any.high(0)));
        double low = -least(all, any -> -any.low(0));
        core = new Interval(low, Math.max(low, least(all, any -> any.high(0))));
        surroundings = new Surroundings(walls, cleat);
        runs = walls.stream()
                .map(wall -> wall.rows().stream().map(Runs::of).toList())
                .toList();
        fixed = IntStream.range(0, walls.size())
                .mapToObj(wall -> surroundings.before(wall, deepest))
                .toList();
        hot = IntStream.range(0, walls.size()).mapToObj(surroundings::hot).toList();
        var numbers = new HashMap<Shape, Integer>();
        shapes = all.stream()
                .map(any -> numbers.computeIfAbsent(Shape.of(any), shape -> numbers.size()))
                .toList();
    }

    /** All of a holder that decides where it may hang. */
    private record Shape(Box3 box, Rect back, boolean isFlammable) {
        static Shape of(ToHang holder) {
            return new Shape(holder.box(), holder.made().back(), holder.isFlammable());
        }
    }

    private static double least(List<ToHang> all, ToDoubleFunction<ToHang> of) {
        return all.stream().mapToDouble(of).min().orElse(0);
    }

    List<CleatedWall> walls() {
        return walls;
    }

    Row row(int wall, int row) {
        return walls.get(wall).rows().get(row);
    }

    Runs runs(int wall, int row) {
        return runs.get(wall).get(row);
    }

    Cleat cleat() {
        return cleat;
    }

    /** How far out the deepest holder reaches, mm. */
    double deepest() {
        return deepest;
    }

    /** Whether any holder on a row may meet it. */
    boolean isInReach(Obstruction any, Row row) {
        return any.isBetween(row.height() + reach.from(), row.height() + reach.to());
    }

    /** What any holder on a row needs. */
    Neighbours.Core core(int wall, int row) {
        double height = row(wall, row).height();
        double low = height + core.from();
        double high = height + core.to();
        var bounds = walls.get(wall).outline().bounds();
        var taken = new ArrayList<Interval>();
        fixed.get(wall).stream()
                .filter(any -> any.isBetween(low, high))
                .forEach(any -> any.taken(shallowest).ifPresent(taken::add));
        var open = Intervals.without(List.of(new Interval(bounds.x0(), bounds.x1())), taken);
        return new Neighbours.Core(low, high, shallowest, open);
    }

    WallPlan plan(int wall) {
        return surroundings.plan(wall);
    }

    List<Obstruction> fixed(int wall) {
        return fixed.get(wall);
    }

    /** What keeps only flammable things away. */
    List<Obstruction> hot(int wall) {
        return hot.get(wall);
    }

    /** Left edges where a holder may hang on a row. */
    List<Interval> places(ToHang holder, int wall, int row) {
        return places.computeIfAbsent(List.of(shapes.get(holder.at()), wall, row), any -> found(holder, wall, row));
    }

    private List<Interval> found(ToHang holder, int wall, int row) {
        var supported = supported(holder, wall, row);
        if (supported.isEmpty()) {
            return supported;
        }
        double height = row(wall, row).height();
        var taken = new ArrayList<Interval>();
        Stream.concat(fixed(wall).stream(), holder.isFlammable() ? hot(wall).stream() : Stream.empty())
                .filter(any -> any.isBetween(holder.low(height), holder.high(height)))
                .forEach(any -> any.blocked(holder).ifPresent(taken::add));
        return Intervals.without(supported, taken);
    }

    /** Where strips bear the hanger. */
    List<Interval> hangers(ToHang holder, int wall, int row) {
        return runs(wall, row).supports(holder.hanger()).stream()
                .map(left -> new Interval(left.from() - holder.hangerFrom(), left.to() - holder.hangerFrom()))
                .toList();
    }

    /** Where strips bear the hanger and all of the holder is inside the wall's outline, lifted too. */
    List<Interval> supported(ToHang holder, int wall, int row) {
        var hangers = hangers(holder, wall, row);
        return hangers.isEmpty()
                ? hangers
                : Intervals.common(hangers, inside(holder, wall, row(wall, row).height()));
    }

    private List<Interval> inside(ToHang holder, int wall, double height) {
        var outline = walls.get(wall).outline();
        double low = holder.low(height);
        double high = holder.high(height);
        var bounds = outline.bounds();
        if (Grid.less(low, bounds.y0()) || Grid.less(bounds.y1(), high)) {
            return List.of();
        }
        var free = outline.isRectangle()
                ? List.of(new Interval(bounds.x0(), bounds.x1()))
                : BareArea.of(outline, List.of()).free(low + Grid.STEP, high - Grid.STEP);
        return free.stream()
                .filter(part -> !Grid.less(part.length(), holder.width()))
                .map(part -> {
                    double from = part.from() - holder.box().min().x();
                    return new Interval(
                            from, Math.max(from, part.to() - holder.box().max().x()));
                })
                .toList();
    }
}
