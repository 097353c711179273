package org.standwright.sheet.plan;

import java.util.Locale;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;

/** A cut line whose pieces are larger than what its sheet leaves inside the trim. */
public final class PartTooLargeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String label;
    private final double excessLength;
    private final double excessWidth;

    /**
     * @param excessLength by how much the piece overhangs along the sheet's length in its better position, or 0, mm
     * @param excessWidth the same across the sheet, mm
     */
    PartTooLargeException(CutLine line, StockSheet sheet, Saw saw, double excessLength, double excessWidth) {
        super(message(line, sheet, saw, excessLength, excessWidth));
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

    private static String message(CutLine line, StockSheet sheet, Saw saw, double excessLength, double excessWidth) {
        return String.format(
                Locale.ROOT,
                "cut line '%s' (%s) is %.2f x %.2f mm, but a sheet of '%s', %.2f x %.2f mm, leaves %.2f x %.2f mm inside its trim: %s. Make the part smaller or buy a larger sheet.",
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

    private static String excess(double alongLength, double alongWidth) {
        var length = String.format(Locale.ROOT, "%.2f mm too much along the sheet's length", alongLength);
        var width = String.format(Locale.ROOT, "%.2f mm too much across it", alongWidth);
        if (alongWidth <= 0) {
            return length;
        }
        return alongLength <= 0 ? width : length + " and " + width;
    }
}
