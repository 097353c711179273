package org.standwright.sheet;

import java.util.List;
import java.util.TreeMap;
import org.standwright.design.kit.Saw;
import org.standwright.unit.Money;

/**
 * Plans for every sheet good of one job, cut with one saw.
 *
 * @param isRepeatable whether the same job gives this plan again; not so where a clock ended the search
 */
public record SheetPlan(Saw saw, List<MaterialPlan> materials, boolean isRepeatable) {
    public SheetPlan {
        materials = List.copyOf(materials);
    }

    /** What the boards whose price is given come to: one sum a currency, by its letters. */
    public List<Money> prices() {
        var sums = new TreeMap<String, Money>();
        materials.stream()
                .flatMap(material -> material.price().stream())
                .forEach(price -> sums.merge(price.currency(), price, Money::plus));
        return List.copyOf(sums.values());
    }
}
