package org.standwright.check;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.part.SheetGood;

/** A measured thickness outside what its standard allows is more likely a slip of the caliper than a board. */
final class SheetThickness implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
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
                .map(nominal -> new Finding(
                        Severity.CAUTION,
                        "sheet-thickness",
                        sheet.material().name(),
                        "Measured " + units.length(measured) + ", but a sheet sold as "
                                + units.length(nominal.thickness()) + " should have " + units.length(nominal.least())
                                + " to " + units.length(nominal.most()) + ". Measure again: every joint follows it.",
                        switch (nominal.standard()) {
                            case METRIC_SANDED -> "EN 315, as quoted";
                            case US_UNSANDED -> "US Product Standard PS 1";
                        }))
                .stream();
    }
}
