package org.standwright.viewer.finding;

import java.util.Locale;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.check.Severity;

/** How a severity is told on the screen: by a sign, by a word, and by a colour in the style sheet. */
enum Weight {
    STOP(Feather.ALERT_OCTAGON, "Stop", "Stops"),
    CAUTION(Feather.ALERT_TRIANGLE, "Caution", "Cautions"),
    NOTE(Feather.INFO, "Note", "Notes"),
    FINE(Feather.CHECK_CIRCLE, "Fine", "Fine");

    private final Feather sign;
    private final String one;
    private final String many;

    Weight(Feather sign, String one, String many) {
        this.sign = sign;
        this.one = one;
        this.many = many;
    }

    static Weight of(Severity severity) {
        return valueOf(severity.name());
    }

    Feather sign() {
        return sign;
    }

    /** 'Stop'. */
    String one() {
        return one;
    }

    /** 'Stops'. */
    String many() {
        return many;
    }

    String styleClass() {
        return name().toLowerCase(Locale.ROOT);
    }
}
