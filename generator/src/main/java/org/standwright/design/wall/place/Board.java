package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** All walls with what hangs on them so far. Walls and rows count from 0 here. */
final class Board {
    /** Between two holders, for fingers, mm (common practice, no source). */
    static final double FINGERS = 20;

    private final EmptyWalls empty;

    /** By wall and row, all that a holder on it might meet, so that a search looks at its neighbourhood only. */
    private final List<List<Neighbours>> hung;

    /** By wall and row, how many moves had been made when one last left it more room. */
    private final int[][] loosened;

    private int moves;

    /** With nothing hung. */
    Board(EmptyWalls empty) {
        this.empty = empty;
        hung = IntStream.range(0, walls().size())
                .mapToObj(wall -> IntStream.range(0, walls().get(wall).rows().size())
                        .mapToObj(row -> new Neighbours(empty.core(wall, row), List.of()))
                        .toList())
                .toList();
        loosened = hung.stream().map(rows -> new int[rows.size()]).toArray(int[][]::new);
    }

    private Board(Board other) {
        empty = other.empty;
        hung = other.hung.stream()
                .map(rows -> rows.stream().map(Neighbours::copy).toList())
                .toList();
        loosened = Arrays.stream(other.loosened).map(int[]::clone).toArray(int[][]::new);
        moves = other.moves;
    }

    Board copy() {
        return new Board(this);
    }

    List<CleatedWall> walls() {
        return empty.walls();
    }

    /** A holder at a place, as it is told to others. */
    HungHolder told(Hung hung) {
        var holder = hung.holder();
        var place = hung.place();
        var wall = walls().get(place.wall());
        var row = wall.rows().get(place.row());
        return new HungHolder(
                holder.made(),
                wall.number(),
                row.number(),
                row.height(),
                place.x(),
                new Backings(wall.rows(), empty.cleat()).of(holder, place.row(), place.x()),
                holder.isByHand());
    }

    void hang(Hung one) {
        forEachRow(one, (wall, row, seen) -> hung.get(wall).get(row).add(new Neighbours.Seen(one, seen)));
    }

    void takeOff(Hung one) {
        forEachRow(one, (wall, row, seen) -> hung.get(wall).get(row).remove(one));
    }

    /** Takes note that one has left its place for good. */
    void hasLeft(Hung one) {
        moves++;
        forEachRow(one, (wall, row, seen) -> loosened[wall][row] = moves);
    }

    /** How many have left their places so far. */
    int moves() {
        return moves;
    }

    /** Whether a row has got more room since so many had left their places. */
    boolean isLooser(Place row, int since) {
        return loosened[row.wall()][row.row()] > since;
    }

    private interface OfRow {
        void accept(int wall, int row, Obstruction seen);
    }

    /** All rows where others may meet it, on any wall. */
    private void forEachRow(Hung one, OfRow action) {
        for (int wall = 0; wall < hung.size(); wall++) {
            var seen = seen(one, wall);
            if (seen.isEmpty()) {
                continue;
            }
            for (int row = 0; row < hung.get(wall).size(); row++) {
                if (empty.isInReach(seen.get(), empty.row(wall, row))) {
                    action.accept(wall, row, seen.get());
                }
            }
        }
    }

    /** What a holder is to others on a wall, lifted off, if any of them can meet it there. */
    private Optional<Obstruction> seen(Hung one, int wall) {
        var area = area(one);
        double high = area.y1() + empty.cleat().headroom();
        int own = one.place().wall();
        if (wall == own) {
            var along = new Interval(area.x0(), area.x1());
            return Optional.of(new Obstruction(one.name(), area.y0(), high, new Footprint.Oblong(along, 0), FINGERS));
        }
        double out = one.holder().box().min().y();
        var box = new Box3(new Vec3(area.x0(), out, area.y0()), new Vec3(area.x1(), 0, high));
        return Optional.of(empty.plan(wall).obstruction(one.name(), box, empty.plan(own)))
                .filter(seen -> seen.footprint().shadow(empty.deepest()).isPresent());
    }

    private Rect area(Hung one) {
        var box = one.holder().box();
        double x = one.place().x();
        double height = empty.row(one.place().wall(), one.place().row()).height();
        return new Rect(
                x + box.min().x(),
                height + box.min().z(),
                x + box.max().x(),
                height + box.max().z());
    }

    /** Left edges where a holder may hang on a row. */
    List<Interval> places(ToHang holder, int wall, int row) {
        if (Grid.less(hung.get(wall).get(row).widest(), holder.width())) {
            return List.of();
        }
        var places = empty.places(holder, wall, row);
        if (places.isEmpty()) {
            return places;
        }
        var taken = new ArrayList<Interval>();
        blocking(holder, wall, row, (one, blocked) -> taken.add(blocked));
        return Intervals.without(places, taken);
    }

    /** Places on a row that would be free if one other left its own. */
    List<Vacated> vacated(ToHang holder, Place row) {
        var places = empty.places(holder, row.wall(), row.row());
        if (places.isEmpty()) {
            return List.of();
        }
        var vacated = new Vacated.Sweep();
        blocking(holder, row.wall(), row.row(), vacated::add);
        return vacated.within(places);
    }

    private void blocking(ToHang holder, int wall, int row, BiConsumer<Hung, Interval> action) {
        double height = empty.row(wall, row).height();
        double low = holder.low(height);
        double high = holder.high(height);
        for (var seen : hung.get(wall).get(row).all()) {
            if (seen.as().isBetween(low, high)) {
                seen.as().blocked(holder).ifPresent(blocked -> action.accept(seen.one(), blocked));
            }
        }
    }

    /** What keeps a holder from a place first, as a sentence without its full stop, if anything does. */
    Optional<String> inTheWay(ToHang holder, Place place) {
        int wall = place.wall();
        int row = place.row();
        double x = place.x();
        if (!contains(empty.hangers(holder, wall, row), x)) {
            return Optional.of("no strips lie under both ends and half of its hanger there");
        }
        if (!contains(empty.supported(holder, wall, row), x)) {
            return Optional.of("it would reach beyond the wall, hung or lifted off");
        }
        double height = empty.row(wall, row).height();
        var hot = holder.isFlammable() ? empty.hot(wall) : List.<Obstruction>of();
        var neighbours = hung.get(wall).get(row).all().stream().map(Neighbours.Seen::as);
        return Stream.of(empty.fixed(wall).stream(), neighbours, hot.stream())
                .flatMap(any -> any)
                .filter(any -> any.isBetween(holder.low(height), holder.high(height)))
                .filter(any -> any.blocked(holder)
                        .filter(taken -> Grid.less(taken.from(), x) && Grid.less(x, taken.to()))
                        .isPresent())
                .map(any -> any.what() + " is in the way")
                .findFirst();
    }

    private static boolean contains(List<Interval> set, double x) {
        return set.stream().anyMatch(part -> part.holds(x));
    }
}
