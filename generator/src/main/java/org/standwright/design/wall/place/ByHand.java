package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.unit.Units;

/** Hangs what its maker chose a place for, or refuses. */
final class ByHand {
    private final Board board;
    private final Units unit;

    ByHand(Board board, Units unit) {
        this.board = board;
        this.unit = unit;
    }

    /** In the order of the design; each hangs on the board afterwards. */
    List<Hung> all(List<ToHang> holders) {
        var places = holders.stream().map(this::place).toList();
        var hung = new ArrayList<Hung>();
        for (int i = 0; i < holders.size(); i++) {
            var holder = holders.get(i);
            var place = places.get(i);
            var wrong = board.inTheWay(holder, place);
            if (wrong.isPresent()) {
                for (int later = i + 1; later < holders.size(); later++) {
                    hang(holders.get(later), places.get(later));
                }
                throw refused(holder, wrong.get(), nearest(holder, place));
            }
            hung.add(hang(holder, place));
        }
        return hung;
    }

    private Hung hang(ToHang holder, Place place) {
        var hung = new Hung(holder, place);
        board.hang(hung);
        return hung;
    }

    private Place place(ToHang holder) {
        var spot = spot(holder);
        var walls = board.walls();
        for (int i = 0; i < walls.size(); i++) {
            if (walls.get(i).wall().name().equals(spot.wall())) {
                return new Place(i, row(holder, walls.get(i)), spot.x(), 0, 0);
            }
        }
        throw refused(
                holder,
                "no wall is called so",
                "The walls are "
                        + walls.stream()
                                .map(wall -> "'" + wall.wall().name() + "'")
                                .collect(Collectors.joining(", "))
                        + ".");
    }

    private int row(ToHang holder, CleatedWall wall) {
        var spot = spot(holder);
        for (int i = 0; i < wall.rows().size(); i++) {
            var row = wall.rows().get(i);
            if (row.number() == spot.row()) {
                if (row.strips().isEmpty()) {
                    throw refused(holder, "this row has no strips on this wall", rowsWithStrips(wall));
                }
                return i;
            }
        }
        throw refused(holder, "the wall has no such row", rowsWithStrips(wall));
    }

    private static String rowsWithStrips(CleatedWall wall) {
        var rows = wall.rows().stream()
                .filter(row -> !row.strips().isEmpty())
                .map(row -> "" + row.number())
                .collect(Collectors.joining(", "));
        return rows.isEmpty() ? "Hang it on another wall." : "Rows with strips there are " + rows + ".";
    }

    private String nearest(ToHang holder, Place place) {
        var nearest = nearest(board.places(holder, place.wall(), place.row()), place.x());
        return nearest.isPresent()
                ? "The nearest x on this row that would do is " + unit.length(nearest.getAsDouble()) + "."
                : "No place on this row would do; try another, or leave its place out and one is looked for.";
    }

    /** The nearest that is still free when it is written and read back, before one that only is so exactly. */
    private OptionalDouble nearest(List<Interval> free, double x) {
        return free.stream()
                .map(part -> written(part, x))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble((Double there) -> Math.abs(there - x)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private Optional<Double> written(Interval part, double x) {
        double step = unit.tapeStep();
        double first = Math.ceil((part.from() - Grid.STEP) / step) * step;
        double last = Math.floor((part.to() + Grid.STEP) / step) * step;
        if (first <= last) {
            return Optional.of(Math.max(first, Math.min(last, x)));
        }
        return Optional.of(Math.max(part.from(), Math.min(part.to(), x)));
    }

    private ImpossibleDesignException refused(ToHang holder, String wrong, String wayOut) {
        var spot = spot(holder);
        return new ImpossibleDesignException(
                "/holders/" + holder.at() + "/place",
                "'" + holder.name() + "' cannot hang on row " + spot.row() + " of wall '" + spot.wall() + "' at "
                        + unit.length(spot.x()) + ": " + wrong + ".",
                List.of(wayOut));
    }

    private static Spot spot(ToHang holder) {
        return holder.made().holder().place().orElseThrow();
    }
}
