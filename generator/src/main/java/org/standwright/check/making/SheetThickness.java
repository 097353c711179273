package org.standwright.check.making;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.part.SheetGood;

/** A measured thickness outside what its standard allows is more likely a slip of the caliper than a board. */
public final class SheetThickness implements Rule<LoadedStand> {
    private static final RuleText TEXT = RuleText.plain(
            "sheet-thickness",
            "Is the measured thickness one that its standard allows?",
            "EN 315, as quoted; US Product Standard PS 1");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().sheets().stream()
                .flatMap(sheet -> odd(sheet, stand))
                .toList();
    }

    private static Stream<Finding> odd(SheetGood sheet, Stand stand) {
        var units = stand.design().unit();
        double measured = sheet.material().thickness();
        return sheet
                .nominal()
                .filter(nominal -> Grid.less(measured, nominal.least()) || Grid.less(nominal.most(), measured))
                .map(nominal -> Finding.caution(
                        TEXT,
                        sheet.material().name(),
                        "Measured " + units.length(measured) + ", but a sheet sold as "
                                + units.length(nominal.thickness()) + " should have " + units.length(nominal.least())
                                + " to " + units.length(nominal.most()) + ". Measure again: every joint follows it."))
                .stream();
    }
}
