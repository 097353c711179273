package org.standwright.sheet.plan;

import java.util.List;

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

    public final String field() {
        return field;
    }
}
