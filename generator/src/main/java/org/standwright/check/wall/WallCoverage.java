package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.built.CleatedWall;

/** That no more strips are on a wall than bare wall is there: a check of the design itself. */
public final class WallCoverage implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "wall-coverage",
            "Are the strips within the bare wall?",
            "share = sum of lengths x height of a strip / bare area",
            "",
            "own check");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.wall().walls().stream()
                .filter(cleated -> !cleated.strips().isEmpty())
                .map(cleated -> found(wall, cleated))
                .toList();
    }

    private static Finding found(HungWall wall, CleatedWall cleated) {
        var units = wall.units();
        double height = wall.design().cleat().height();
        double length = cleated.strips().stream()
                .mapToDouble(strip -> strip.along().length())
                .sum();
        double share = length * height / cleated.bare().size();
        return Finding.judged(
                        TEXT,
                        cleated.wall().name(),
                        new Gauge(Quantity.RATIO, share, Limit.atMost(1)),
                        "Strips cover " + units.area(length * height) + " of "
                                + units.area(cleated.bare().size()) + " of bare wall.")
                .with(
                        new Input("sum", "length of all strips", Quantity.LENGTH, length),
                        new Input("height", "of a strip", Quantity.LENGTH, height));
    }
}
