package org.standwright.viewer.work;

/** How far the work on the newest text has come. */
public enum Stage {
    BUILDING("Building …"),
    CHECKING("Checking …"),
    CURING("Looking for cures …"),
    PLANNING("Looking for a better sheet plan …"),
    DONE(""),
    /** There is a problem with the text. */
    REFUSED("");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /** For the line below the window; empty when nothing is being done. */
    public String words() {
        return words;
    }
}
