package org.standwright.design;

import java.util.List;

/** A design that cannot be built: what stands against it, and the nearest that can be. */
public final class ImpossibleDesignException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * @param field JSON pointer of the field to change, such as {@code /workingHeight}
     * @param reason what the value is and which rule it breaks
     * @param waysOut changes that would make it possible, the smallest first
     */
    public ImpossibleDesignException(String field, String reason, List<String> waysOut) {
        super(reason + (waysOut.isEmpty() ? "" : " " + String.join(" ", waysOut)));
        this.field = field;
    }

    public String field() {
        return field;
    }
}
