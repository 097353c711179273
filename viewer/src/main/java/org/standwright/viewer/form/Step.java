package org.standwright.viewer.form;

import java.util.Locale;
import org.standwright.file.form.Row;

/** What the steps of a form's history are called. */
final class Step {
    private Step() {}

    /** 'Change width of bay 2'. */
    static String of(String verb, Row row) {
        var entry = row.parent();
        while (!row.isEntry() && entry.isPresent() && !entry.get().isEntry()) {
            entry = entry.get().parent();
        }
        var of = row.isEntry()
                ? ""
                : entry.map(around -> " of " + small(around.label())).orElse("");
        return verb + " " + small(row.label()) + of;
    }

    private static String small(String label) {
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
