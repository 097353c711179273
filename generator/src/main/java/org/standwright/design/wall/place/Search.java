package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Interval;

/**
 * The place where a holder costs least. Tried are both ends of each stretch of free places, which is beside neighbours or
 * at the ends of runs, and where a stud lies behind a quarter of the hanger's length from either end, or two lie evenly.
 * The best of them moves to a mark of the tape next to it, where one is free.
 */
final class Search {
    private final List<CleatedWall> walls;
    private final List<List<StudLine>> studs;
    private final List<List<StudLine>> middles;
    private final Cost cost;
    private final Tape tape;

    /** By the holder's place in the design. */
    private final Map<Integer, List<Place>> rows = new HashMap<>();

    Search(List<CleatedWall> walls, Cost cost, Tape tape) {
        this.walls = walls;
        this.studs = walls.stream()
                .map(wall -> wall.rows().stream().map(StudLine::of).toList())
                .toList();
        this.middles = studs.stream()
                .map(lines -> lines.stream().map(StudLine::middles).toList())
                .toList();
        this.cost = cost;
        this.tape = tape;
    }

    Optional<Place> best(ToHang holder, Board board) {
        return below(Double.POSITIVE_INFINITY, holder, board, row -> true);
    }

    /** The best of some rows that costs less than this in all. */
    Optional<Place> below(double limit, ToHang holder, Board board, Predicate<Place> rows) {
        Found best = null;
        double least = limit;
        for (var row : rows(holder)) {
            // later ones of equal cost come later in the order, too
            if (row.cost() >= least) {
                break;
            }
            if (rows.test(row)) {
                best = best(best, holder, row, board.places(holder, row.wall(), row.row()));
                least = best == null ? limit : Math.min(limit, best.place.total());
            }
        }
        return onTape(best, holder).filter(place -> place.total() < limit);
    }

    /** The best on one row of those places. */
    Optional<Place> best(ToHang holder, Place row, List<Interval> places) {
        return onTape(best(null, holder, row, places), holder);
    }

    /** The same place as the board is now. */
    Place again(ToHang holder, Place place, Board board) {
        return board.places(holder, place.wall(), place.row()).stream()
                .filter(free -> free.holds(place.x()))
                .findFirst()
                .map(free ->
                        new Place(place.wall(), place.row(), place.x(), place.cost(), cost.spoilt(place.x(), free)))
                .orElse(place);
    }

    /** All rows, the one at the best height first, at what the height alone costs. */
    List<Place> rows(ToHang holder) {
        return rows.computeIfAbsent(holder.at(), any -> sorted(holder));
    }

    private List<Place> sorted(ToHang holder) {
        var sorted = new ArrayList<Place>();
        for (int wall = 0; wall < walls.size(); wall++) {
            var all = walls.get(wall).rows();
            for (int row = 0; row < all.size(); row++) {
                if (!all.get(row).strips().isEmpty()) {
                    double height = cost.height(holder, all.get(row).height());
                    sorted.add(new Place(wall, row, 0, height, 0));
                }
            }
        }
        sorted.sort(Place.BEST_FIRST);
        return sorted;
    }

    /** A place in a stretch of free ones, on a row at what its height costs. */
    private record Found(Place place, Place row, Interval free) {}

    private Found best(Found before, ToHang holder, Place row, List<Interval> places) {
        var best = before;
        for (var free : places) {
            for (double x : candidates(holder, row, free)) {
                var place = place(holder, row, x, free);
                if (best == null || Place.BEST_FIRST.compare(place, best.place) < 0) {
                    best = new Found(place, row, free);
                }
            }
        }
        return best;
    }

    private Optional<Place> onTape(Found best, ToHang holder) {
        if (best == null) {
            return Optional.empty();
        }
        return tape.near(best.place.x(), best.free)
                .mapToObj(x -> place(holder, best.row, x, best.free))
                .min(Comparator.comparingDouble(Place::total))
                .or(() -> Optional.of(best.place));
    }

    private List<Double> candidates(ToHang holder, Place row, Interval free) {
        var candidates = new ArrayList<Double>();
        candidates.add(free.from());
        candidates.add(free.to());
        var lines = studs.get(row.wall()).get(row.row());
        add(holder, 0.25, lines, free, candidates);
        add(holder, 0.5, middles.get(row.wall()).get(row.row()), free, candidates);
        add(holder, 0.75, lines, free, candidates);
        return candidates;
    }

    /** The first and the last with such a part of the hanger left of one of these marks. */
    private static void add(ToHang holder, double part, StudLine marks, Interval free, List<Double> candidates) {
        double from = holder.hangerFrom() + part * holder.hanger();
        for (double mark : marks.ends(free.from() + from, free.to() + from)) {
            candidates.add(Math.max(free.from(), Math.min(free.to(), mark - from)));
        }
    }

    private Place place(ToHang holder, Place row, double x, Interval free) {
        double left = x + holder.hangerFrom();
        int behind = studs.get(row.wall()).get(row.row()).between(left, left + holder.hanger());
        return new Place(row.wall(), row.row(), x, row.cost() + cost.studs(behind), cost.spoilt(x, free));
    }
}
