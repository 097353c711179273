package org.standwright.sheet.plan;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.design.kit.StockSheet;

/** A job that no plan can do: what stands against it, and what would help. */
public sealed class ImpossiblePlanException extends RuntimeException permits PartTooLargeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * @param field JSON pointer of the field to change where the job is that of a design file, such as {@code
     *     /stock/sheets}
     * @param reason what the value is and which rule it breaks
     * @param waysOut changes that would make it possible, the smallest first
     */
    public ImpossiblePlanException(String field, String reason, List<String> waysOut) {
        super(waysOut.isEmpty() ? reason : reason + " " + String.join(" ", waysOut));
        this.field = field;
    }

    /**
     * No board is of the thickness that a piece counts on.
     *
     * @param what the piece, as a message begins
     * @param sheets the boards of its material
     * @param fit how much wider a dado is than the board it was drawn for, mm
     */
    public static ImpossiblePlanException notMating(String what, List<StockSheet> sheets, double fit) {
        var any = sheets.get(0);
        var measured = sheets.stream()
                .map(sheet -> String.format(Locale.ROOT, "'%s' %.2f mm", sheet.name(), sheet.thickness()))
                .collect(Collectors.joining(", "));
        return new ImpossiblePlanException(
                "/stock/sheets",
                what
                        + String.format(
                                Locale.ROOT,
                                " counts on a board of %.2f to %.2f mm, and no board that is large enough is: %s.",
                                any.thinnest(fit),
                                any.thickest(fit),
                                measured),
                List.of("Draw the design for the boards that are there: write their thickness into its sheet."));
    }

    public final String field() {
        return field;
    }
}
