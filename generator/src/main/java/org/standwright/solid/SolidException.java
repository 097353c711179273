package org.standwright.solid;

/** No closed solid can be made of a part; the message names it. */
public final class SolidException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    SolidException(String part, RuntimeException last) {
        super("no closed solid can be made of '" + part + "': " + last.getMessage() + ".", last);
    }
}
