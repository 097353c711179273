package org.standwright.sheet.lane;

/** What one step of a search does to a layout. */
public interface Move<B extends BoardInWork<B>> {
    /**
     * Takes some pieces off and lays what is missing, as far as it finds a place.
     *
     * @param limit what the boards may cost together, in the search's own count
     */
    void change(Layout<B> layout, long limit);

    /** Hears that the search goes on from a layout that was changed. */
    default void accepted(Layout<B> layout) {}
}
