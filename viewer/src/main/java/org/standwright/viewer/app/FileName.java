package org.standwright.viewer.app;

import java.util.Locale;
import org.standwright.viewer.work.Desk;

/** A name for a new file: what its maker calls the furniture, in letters that every system takes. */
final class FileName {
    private FileName() {}

    /** 'Planer stand' becomes 'planer-stand.json'. */
    static String of(Desk desk) {
        return plain(desk) + ".json";
    }

    static String plain(Desk desk) {
        return desk.builtProperty()
                .get()
                .map(built -> built.furniture().design().name())
                .map(name -> name.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", ""))
                .filter(name -> !name.isEmpty())
                .orElse("design");
    }
}
