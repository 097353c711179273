package org.standwright.unit;

/** A text that is no quantity of the kind asked for; the message says what would be one. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    QuantityException(String message) {
        super(message);
    }
}
