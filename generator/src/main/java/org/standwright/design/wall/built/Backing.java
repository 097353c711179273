package org.standwright.design.wall.built;

/**
 * Where the lower back of a holder finds the wall.
 *
 * @param below how far the lowest place where it touches lies below the high edge of the strip that it hangs on, mm
 */
public record Backing(By by, double below) {
    public enum By {
        /** The strip that it hangs on. */
        OWN_STRIP,
        /** A strip of a lower row. */
        LOWER_STRIP,
        /** A strip of its own on its back, as thick as the cleats. */
        SPACER
    }
}
