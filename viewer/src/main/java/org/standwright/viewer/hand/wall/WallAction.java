package org.standwright.viewer.hand.wall;

/** What may be done to what is picked on a wall. */
public enum WallAction {
    PLACE_AGAIN("Let a place be found"),
    DUPLICATE("Duplicate"),
    REMOVE("Remove");

    private final String words;

    WallAction(String words) {
        this.words = words;
    }

    /** For a menu. */
    public String words() {
        return words;
    }
}
