package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Row;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Vec3;

/** All walls with what hangs on them so far. Walls and rows count from 0 here. */
final class Board {
    /** Between two holders, for fingers, mm (common practice, no source). */
    static final double FINGERS = 20;

    private final List<CleatedWall> walls;
    private final Surroundings surroundings;
    private final Cleat cleat;
    private final double deepest;
    private final List<List<Runs>> runs;
    private final List<List<Obstruction>> fixed;
    private final List<List<Obstruction>> hot;
    private final List<List<Obstruction>> hung;

    private Board(Board empty) {
        walls = empty.walls;
        surroundings = empty.surroundings;
        cleat = empty.cleat;
        deepest = empty.deepest;
        runs = empty.runs;
        fixed = empty.fixed;
        hot = empty.hot;
        hung = empty.hung.stream().<List<Obstruction>>map(ArrayList::new).toList();
    }

    /** With nothing hung. */
    Board(List<CleatedWall> walls, Cleat cleat, List<ToHang> all) {
        this.walls = walls;
        this.cleat = cleat;
        deepest = all.stream().mapToDouble(ToHang::depth).max().orElse(0);
        surroundings = new Surroundings(walls, cleat);
        runs = walls.stream()
                .map(wall -> wall.rows().stream().map(Runs::of).toList())
                .toList();
        fixed = each(wall -> surroundings.before(wall, deepest));
        hot = each(surroundings::hot);
        hung = each(wall -> new ArrayList<>());
    }

    private List<List<Obstruction>> each(IntFunction<List<Obstruction>> before) {
        return IntStream.range(0, walls.size()).mapToObj(before).toList();
    }

    Board copy() {
        return new Board(this);
    }

    List<CleatedWall> walls() {
        return walls;
    }

    Runs runs(int wall, int row) {
        return runs.get(wall).get(row);
    }

    /** A holder at a place, not on the board yet. */
    HungHolder hung(ToHang holder, int wall, int row, double x, boolean byHand) {
        var rows = walls.get(wall).rows();
        return new HungHolder(
                holder.made(),
                walls.get(wall).number(),
                rows.get(row).number(),
                rows.get(row).height(),
                x,
                new Backings(rows, cleat).of(holder, row, x),
                byHand);
    }

    void hang(HungHolder holder) {
        int wall = holder.wall() - 1;
        var area = holder.area();
        double high = area.y1() + cleat.headroom();
        var along = new Interval(area.x0(), area.x1());
        hung.get(wall)
                .add(new Obstruction(
                        "'" + holder.name() + "'", area.y0(), high, new Footprint.Oblong(along, 0), FINGERS));
        var box = new Box3(new Vec3(area.x0(), holder.made().box().min().y(), area.y0()), new Vec3(area.x1(), 0, high));
        for (int other = 0; other < walls.size(); other++) {
            if (other != wall) {
                var seen =
                        surroundings.plan(other).obstruction("'" + holder.name() + "'", box, surroundings.plan(wall));
                if (seen.footprint().shadow(deepest).isPresent()) {
                    hung.get(other).add(seen);
                }
            }
        }
    }

    /** Left edges where a holder may hang on a row. */
    List<Interval> places(ToHang holder, int wall, int row) {
        var supported = supported(holder, wall, row);
        if (supported.isEmpty()) {
            return supported;
        }
        var taken = new ArrayList<Interval>();
        obstructions(holder, wall).forEach(list -> take(list, holder, row(wall, row), taken));
        return Intervals.without(supported, taken);
    }

    /** What keeps a holder from a place first, as a sentence without its full stop, if anything does. */
    Optional<String> inTheWay(ToHang holder, int wall, int row, double x) {
        if (!contains(hangers(holder, wall, row), x)) {
            return Optional.of("no strips lie under both ends and half of its hanger there");
        }
        if (!contains(supported(holder, wall, row), x)) {
            return Optional.of("it would reach beyond the wall, hung or lifted off");
        }
        double height = row(wall, row).height();
        return obstructions(holder, wall)
                .flatMap(List::stream)
                .filter(any -> any.isBetween(holder.low(height), holder.high(height)))
                .filter(any -> blocked(any, holder)
                        .filter(taken -> Grid.less(taken.from(), x) && Grid.less(x, taken.to()))
                        .isPresent())
                .map(any -> any.what() + " is in the way")
                .findFirst();
    }

    private Row row(int wall, int row) {
        return walls.get(wall).rows().get(row);
    }

    private Stream<List<Obstruction>> obstructions(ToHang holder, int wall) {
        return holder.isFlammable()
                ? Stream.of(fixed.get(wall), hung.get(wall), hot.get(wall))
                : Stream.of(fixed.get(wall), hung.get(wall));
    }

    private static void take(List<Obstruction> list, ToHang holder, Row row, List<Interval> taken) {
        double low = holder.low(row.height());
        double high = holder.high(row.height());
        for (var any : list) {
            if (any.isBetween(low, high)) {
                blocked(any, holder).ifPresent(taken::add);
            }
        }
    }

    /** Left edges that an obstruction forbids, its ends excluded. */
    private static Optional<Interval> blocked(Obstruction any, ToHang holder) {
        return any.footprint()
                .shadow(holder.depth())
                .map(shadow -> new Interval(
                        shadow.from() - any.beside() - holder.box().max().x(),
                        shadow.to() + any.beside() - holder.box().min().x()));
    }

    private List<Interval> hangers(ToHang holder, int wall, int row) {
        return runs(wall, row).supports(holder.hanger()).stream()
                .map(left -> new Interval(left.from() - holder.hangerFrom(), left.to() - holder.hangerFrom()))
                .toList();
    }

    /** Where strips bear the hanger and all of the holder is inside the wall's outline, lifted too. */
    private List<Interval> supported(ToHang holder, int wall, int row) {
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

    private static boolean contains(List<Interval> set, double x) {
        return set.stream().anyMatch(part -> part.holds(x));
    }
}
