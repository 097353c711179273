package org.standwright.sheet.plan;

import java.util.List;
import java.util.Locale;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;

/** A cut line whose pieces are larger than what any of its boards leaves inside the trim. */
public final class PartTooLargeException extends ImpossiblePlanException {
    private static final long serialVersionUID = 1L;

    private final String label;
    private final double excessLength;
    private final double excessWidth;

    /**
     * @param excessLength by how much the piece overhangs along the sheet's length in its better position, or 0, mm
     * @param sheet the nearest of them
     * @param excessWidth the same across the sheet, mm
     * @param fitsTurned whether it would fit some board if its grain did not matter
     */
    PartTooLargeException(
            CutLine line, StockSheet sheet, Saw saw, double excessLength, double excessWidth, boolean fitsTurned) {
        super(
                "/stock/sheets",
                reason(line, sheet, saw, excessLength, excessWidth),
                waysOut(line, sheet, excessLength, excessWidth, fitsTurned));
        this.label = line.label();
        this.excessLength = excessLength;
        this.excessWidth = excessWidth;
    }

    /** Label of the cut line. */
    public String label() {
        return label;
    }

    /** Overhang along the sheet's length, 0 where it fits, mm. */
    public double excessLength() {
        return excessLength;
    }

    /** Overhang across the sheet, 0 where it fits, mm. */
    public double excessWidth() {
        return excessWidth;
    }

    private static String reason(CutLine line, StockSheet sheet, Saw saw, double excessLength, double excessWidth) {
        return String.format(
                Locale.ROOT,
                "cut line '%s' (%s) is %.2f x %.2f mm, but a sheet of '%s', %.2f x %.2f mm, leaves %.2f x %.2f mm inside its trim: %s.",
                line.label(),
                line.part().name(),
                line.part().roughLength(),
                line.part().roughWidth(),
                sheet.name(),
                sheet.length(),
                sheet.width(),
                sheet.length() - saw.trim().left() - saw.trim().right(),
                sheet.width() - saw.trim().bottom() - saw.trim().top(),
                excess(excessLength, excessWidth));
    }

    private static List<String> waysOut(
            CutLine line, StockSheet sheet, double excessLength, double excessWidth, boolean fitsTurned) {
        var larger = String.format(
                Locale.ROOT,
                "Make the part smaller or buy a sheet of at least %.2f x %.2f mm.",
                sheet.length() + excessLength,
                sheet.width() + excessWidth);
        return fitsTurned ? List.of(larger, turned(line.part().name())) : List.of(larger);
    }

    /** The way out where only the grain stands against it. */
    static String turned(String names) {
        return "It would fit turned: let its grain run either way (\"anyGrain\" of \"cutting\": " + names + ").";
    }

    private static String excess(double alongLength, double alongWidth) {
        var length = String.format(Locale.ROOT, "%.2f mm too much along the sheet's length", alongLength);
        var width = String.format(Locale.ROOT, "%.2f mm too much across it", alongWidth);
        if (alongWidth <= 0) {
            return length;
        }
        return alongLength <= 0 ? width : length + " and " + width;
    }
}
