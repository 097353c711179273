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
        this(field, reason + (waysOut.isEmpty() ? "" : " " + String.join(" ", waysOut)));
    }

    private ImpossibleDesignException(String field, String message) {
        super(message);
        this.field = field;
    }

    /** The same refusal at another field. */
    public ImpossibleDesignException at(String other) {
        return new ImpossibleDesignException(other, getMessage());
    }

    public String field() {
        return field;
    }
}
