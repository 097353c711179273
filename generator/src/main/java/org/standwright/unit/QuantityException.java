package org.standwright.unit;

/** A text that is no quantity of the kind asked for; the message says what would be one. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String rule;
    private final String wayOut;

    QuantityException(String text, String rule, String wayOut) {
        super("'" + text + "' " + rule + ". " + wayOut);
        this.rule = rule;
        this.wayOut = wayOut;
    }

    /** What the text must be: 'must be a length'. */
    public String rule() {
        return rule;
    }

    /** What to write instead, as sentences. */
    public String wayOut() {
        return wayOut;
    }
}
