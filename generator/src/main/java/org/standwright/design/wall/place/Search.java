package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Interval;

/**
 * The place where a holder costs least. Tried are both ends of each stretch of free places, which is beside neighbours or
 * at the ends of runs, and where a stud lies behind a quarter of the hanger's length from either end, or two lie evenly.
 */
final class Search {
    private final List<CleatedWall> walls;
    private final List<StudLine> studs;
    private final List<StudLine> middles;
    private final Cost cost;

    Search(List<CleatedWall> walls, Cost cost) {
        this.walls = walls;
        this.studs = walls.stream().map(wall -> StudLine.of(wall.studs())).toList();
        this.middles = studs.stream().map(StudLine::middles).toList();
        this.cost = cost;
    }

    Optional<Place> best(ToHang holder, Board board) {
        Place best = null;
        for (var row : rows(holder)) {
            if (best != null && best.cost() < row.cost()) {
                break;
            }
            for (var free : board.places(holder, row.wall(), row.row())) {
                for (double x : candidates(holder, row.wall(), free)) {
                    var place = new Place(row.wall(), row.row(), x, row.cost() + cost(holder, row.wall(), x, free));
                    if (best == null || Place.BEST_FIRST.compare(place, best) < 0) {
                        best = place;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** All rows, the one at the best height first, at what the height alone costs. */
    private List<Place> rows(ToHang holder) {
        var rows = new ArrayList<Place>();
        for (int wall = 0; wall < walls.size(); wall++) {
            var all = walls.get(wall).rows();
            for (int row = 0; row < all.size(); row++) {
                if (!all.get(row).strips().isEmpty()) {
                    rows.add(new Place(
                            wall, row, 0, cost.height(holder, all.get(row).height())));
                }
            }
        }
        rows.sort(Place.BEST_FIRST);
        return rows;
    }

    private List<Double> candidates(ToHang holder, int wall, Interval free) {
        var candidates = new ArrayList<Double>();
        candidates.add(free.from());
        candidates.add(free.to());
        add(holder, 0.25, studs.get(wall), free, candidates);
        add(holder, 0.5, middles.get(wall), free, candidates);
        add(holder, 0.75, studs.get(wall), free, candidates);
        return candidates;
    }

    /** The first and the last with such a part of the hanger left of one of these marks. */
    private static void add(ToHang holder, double part, StudLine marks, Interval free, List<Double> candidates) {
        double from = holder.hangerFrom() + part * holder.hanger();
        for (double mark : marks.ends(free.from() + from, free.to() + from)) {
            candidates.add(Math.max(free.from(), Math.min(free.to(), mark - from)));
        }
    }

    private double cost(ToHang holder, int wall, double x, Interval free) {
        double left = x + holder.hangerFrom();
        return cost.place(studs.get(wall).between(left, left + holder.hanger()), x, free);
    }
}
