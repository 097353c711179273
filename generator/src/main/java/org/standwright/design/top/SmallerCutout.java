package org.standwright.design.top;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.Cutout;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;

/** The largest cut-out that has room where one does not: around the same centre, round, or as wide or as high. */
record SmallerCutout(Units units, Surroundings around) {
    /** The smallest that a design file takes, mm. */
    private static final double LEAST = 5;

    /** What to make of a cut-out that takes this area. */
    String way(Cutout cutout, Rect area) {
        double x = (area.x0() + area.x1()) / 2;
        double y = (area.y0() + area.y1()) / 2;
        if (cutout instanceof Cutout.Round) {
            return largest(area, area.width(), size -> Taken.around(x, y, size / 2))
                    .map(size -> "Make its diameter " + size + ".")
                    .orElse("Make it smaller.");
        }
        return largest(area, area.width(), size -> new Rect(x - size / 2, area.y0(), x + size / 2, area.y1()))
                .map(size -> "Make it " + size + " wide.")
                .or(() -> largest(
                                area, area.height(), size -> new Rect(area.x0(), y - size / 2, area.x1(), y + size / 2))
                        .map(size -> "Make it " + size + " high."))
                .orElse("Make it smaller.");
    }

    private Optional<String> largest(Rect area, double now, DoubleFunction<Rect> smaller) {
        double x = (area.x0() + area.x1()) / 2;
        double y = (area.y0() + area.y1()) / 2;
        var spot = new FreeSpot(around.board(), around.taken());
        return Stream.concat(Stream.of(around.board()), around.taken().stream().map(Taken::area))
                .flatMapToDouble(
                        edges -> DoubleStream.of(edges.x0() - x, edges.x1() - x, edges.y0() - y, edges.y1() - y))
                .mapToObj(distance -> Exact.onTapeDown(units, 2 * Math.abs(distance)))
                .filter(size -> size >= LEAST && size < now && spot.isFree(smaller.apply(size)))
                .max(Comparator.naturalOrder())
                .map(units::length);
    }
}
