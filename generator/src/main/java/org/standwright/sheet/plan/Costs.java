package org.standwright.sheet.plan;

import java.math.BigDecimal;
import java.util.List;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.Proof.Goal;

/** What boards cost, in the measure that serves this stock. */
record Costs(Goal goal) {
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    /** Sheets where one size is bought; else money where all prices are known in one currency, and area where not. */
    static Costs of(List<StockSheet> sheets) {
        var bought = sheets.stream().filter(StockSheet::isBought).toList();
        if (bought.size() < 2) {
            return new Costs(Goal.SHEETS);
        }
        var prices = bought.stream().flatMap(sheet -> sheet.price().stream()).toList();
        boolean known = prices.size() == bought.size()
                && prices.stream().map(price -> price.currency()).distinct().count() == 1;
        return new Costs(known ? Goal.MONEY : Goal.AREA);
    }

    /** Of one board; what is at hand costs nothing. */
    long of(StockSheet sheet) {
        if (!sheet.isBought()) {
            return 0;
        }
        return switch (goal) {
            case SHEETS -> 1;
            case MONEY -> thousandths(sheet);
            case AREA -> Math.round(sheet.length() * sheet.width());
        };
    }

    private static long thousandths(StockSheet sheet) {
        var price = sheet.price().orElseThrow();
        if (price.amount().compareTo(MOST) > 0) {
            throw new ImpossiblePlanException(
                    "/stock/sheets",
                    "a sheet of '" + sheet.name() + "' costs " + price + ", but prices above " + MOST
                            + " are not compared.",
                    List.of("Write its price in a larger unit, or leave it out."));
        }
        return price.amount().movePointRight(3).longValueExact();
    }
}
