package org.standwright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Material;

/** Judges what a plan takes out of the stock. */
public final class StockVerifier {
    private StockVerifier() {}

    /**
     * @param planned a plan's materials
     * @param sheets all that it takes
     */
    public static List<String> faults(Stock stock, List<Material> planned, Stream<StockSheet> sheets) {
        var faults = new ArrayList<String>();
        var seen = new HashSet<Material>();
        for (var material : planned) {
            if (!seen.add(material)) {
                faults.add("Sheets of '" + material.name() + "' are planned twice.");
            }
        }
        var taken = new LinkedHashMap<StockSheet, Integer>();
        sheets.forEach(sheet -> taken.merge(sheet, 1, Integer::sum));
        taken.forEach((sheet, count) -> {
            // equal boards may be listed more than once
            long there = stock.sheets().stream()
                    .filter(sheet::equals)
                    .mapToLong(same -> same.count().orElse(Integer.MAX_VALUE))
                    .sum();
            if (count > there) {
                faults.add("The plan takes " + count + " of sheet '" + sheet.name() + "', but "
                        + (there == 0 ? "it is not in stock." : "the stock holds " + there + "."));
            }
        });
        return faults;
    }
}
