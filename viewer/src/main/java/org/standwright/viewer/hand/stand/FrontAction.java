package org.standwright.viewer.hand.stand;

/** What may be done to what is picked on a stand's front. */
public enum FrontAction {
    ADD_DRAWER("Add drawer"),
    REMOVE("Remove"),
    SPLIT("Split in two"),
    JOIN("Join with the next"),
    UP("Move up"),
    DOWN("Move down"),
    DRAWERS("Make it drawers"),
    DOOR("Make it a door"),
    OPEN("Make it an open shelf"),
    ADD_BAY("Add bay to the right"),
    REMOVE_BAY("Remove bay"),
    BAY_LEFT("Swap bay with the left one"),
    BAY_RIGHT("Swap bay with the right one"),
    SPLIT_BAY("Split bay");

    private final String words;

    FrontAction(String words) {
        this.words = words;
    }

    /** For a menu. */
    public String words() {
        return words;
    }

    /** Whether it is done to the whole bay that the picked thing stands in. */
    public boolean isOfBay() {
        return compareTo(ADD_BAY) >= 0;
    }
}
