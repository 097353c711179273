package org.standwright.router.plan;

import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.plan.places.FilledBoard;
import org.standwright.router.plan.places.Filling;
import org.standwright.router.plan.places.Place;
import org.standwright.router.plan.places.PlaceSearch;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.plan.Effort;

/** One material's pieces at their places. */
record Laid(RouterWork work, Filling filling) {
    /** @throws org.standwright.sheet.lane.ScarceStockException when the boards do not suffice */
    static Laid of(RouterWork work, Effort effort, BooleanSupplier givenUp) {
        // of the seconds, half for each of both searches
        double seconds = effort.seconds() / 2;
        var sawn = new Effort(effort.rounds(), 0, seconds, effort.isRepeatable());
        var free = new Effort(effort.rounds(), effort.offcutRounds(), seconds, effort.isRepeatable());
        long bound = LowerBound.of(work.job());
        var first = SawnFirst.of(work.job(), bound, sawn.budget(givenUp));
        return new Laid(work, PlaceSearch.run(work.job(), first, bound, free.budget(givenUp)));
    }

    boolean isBetter(Laid other) {
        return filling.cost() < other.filling.cost()
                || filling.cost() == other.filling.cost() && filling.rest() > other.filling.rest();
    }

    /** In the order of the stock, the fullest first. */
    List<RoutedSheet> sheets() {
        return filling.boards().stream()
                .sorted(Comparator.comparingInt(FilledBoard::kind).thenComparingLong(FilledBoard::rest))
                .map(board -> new RoutedSheet(work.sheets().get(board.kind()), pieces(board)))
                .toList();
    }

    private List<RoutedPiece> pieces(FilledBoard board) {
        return board.places().stream()
                .flatMap(this::pieces)
                .sorted(Comparator.comparingDouble(
                                (RoutedPiece piece) -> piece.outline().bounds().y0())
                        .thenComparingDouble(piece -> piece.outline().bounds().x0()))
                .toList();
    }

    private Stream<RoutedPiece> pieces(Place place) {
        return work.kits().get(place.type()).at(place.x(), place.y(), place.turned(), work.spacing()).stream();
    }
}
