package org.standwright.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.standwright.design.StockEntry;
import org.standwright.design.StockPlan;
import org.standwright.geom.Grid;
import org.standwright.part.SheetGood;

/**
 * What becomes of the stock where other sheets are used. Where another one is bought, entries of the old that are bought
 * go; those at hand stay, at their sizes, where they are as thick as the new one.
 */
final class BoardsAtHand {
    private BoardsAtHand() {}

    static StockPlan of(StockPlan stock, UnaryOperator<SheetGood> sheets) {
        return new StockPlan(
                stock.keep(),
                stock.sheets().stream()
                        .flatMap(entry -> changed(entry, sheets.apply(entry.sheet())).stream())
                        .toList());
    }

    private static Optional<StockEntry> changed(StockEntry entry, SheetGood then) {
        var now = entry.sheet();
        boolean isOther = !now.material().name().equals(then.material().name());
        boolean stays = entry.atHand()
                && Grid.same(now.material().thickness(), then.material().thickness());
        if (isOther && !stays) {
            return Optional.empty();
        }
        return Optional.of(new StockEntry(
                then,
                entry.name(),
                OptionalDouble.of(entry.length().orElse(now.length())),
                OptionalDouble.of(entry.width().orElse(now.width())),
                entry.count(),
                entry.thickness(),
                entry.price(),
                entry.atHand()));
    }
}
