package org.standwright.sheet;

import java.util.List;
import java.util.TreeMap;
import org.standwright.design.kit.Saw;
import org.standwright.unit.Money;

/** Plans for every sheet good of one job, cut with one saw. */
public record SheetPlan(Saw saw, List<MaterialPlan> materials) {
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
