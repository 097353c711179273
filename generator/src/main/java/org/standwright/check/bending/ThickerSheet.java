package org.standwright.check.bending;

import java.util.Comparator;
import java.util.Optional;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** The next thicker sheet: one that the design uses anyway, or one like the present in a thickness that is sold. */
final class ThickerSheet {
    private static final double INCH = 25.4;
    /** Metric plywood, mm (EN 315 and mills' tables). */
    private static final double[] METRIC = {3, 4, 6.5, 9, 12, 15, 18, 21, 24, 27, 30};
    /** Inches, as categories of PS 1. */
    private static final double[] INCHES = {0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25};

    /** So much thicker at least, for a real difference: measured thicknesses of one nominal one vary. */
    private static final double STEP = 1.15;

    private ThickerSheet() {}

    static SheetGood than(SheetGood sheet, StandDesign design) {
        double least = STEP * sheet.material().thickness();
        return design.sheets().stream()
                .filter(other -> !Grid.less(other.material().thickness(), least))
                .min(Comparator.comparingDouble(other -> other.material().thickness()))
                .orElseGet(() -> like(sheet, sold(least, design.unit()), design.unit()));
    }

    private static double sold(double least, Units units) {
        double unit = units == Units.MM ? 1 : INCH;
        for (double size : units == Units.MM ? METRIC : INCHES) {
            if (!Grid.less(size * unit, least)) {
                return size * unit;
            }
        }
        return least;
    }

    private static SheetGood like(SheetGood sheet, double thickness, Units units) {
        var now = sheet.material();
        var thicker = new Material(
                now.name() + ", but " + units.length(thickness) + " thick",
                thickness,
                now.density(),
                now.grain(),
                now.barWidth(),
                now.colour(),
                now.elasticity());
        return new SheetGood(thicker, sheet.length(), sheet.width(), Optional.empty(), Optional.empty());
    }
}
