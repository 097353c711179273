package org.standwright.drawing;

import java.io.InputStream;

/** The two cuts of the one typeface that is shipped: Liberation Sans, SIL Open Font License 1.1. */
public enum Weight {
    REGULAR("LiberationSans-Regular.ttf"),
    BOLD("LiberationSans-Bold.ttf");

    private final String file;

    Weight(String file) {
        this.file = file;
    }

    /** The TrueType file; the caller closes it. */
    public InputStream open() {
        return Weight.class.getResourceAsStream("font/" + file);
    }
}
