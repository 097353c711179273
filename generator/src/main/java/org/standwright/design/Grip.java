package org.standwright.design;

import org.standwright.design.kit.Pull;

/** What a hand opens a drawer or a door by. */
public sealed interface Grip {
    /** A handle or knob, bored after the front is set. */
    record Bought(Pull pull) implements Grip {}

    /**
     * A notch in the middle of the front's upper edge.
     *
     * @param width mm
     * @param depth down from the edge, mm
     */
    record Notch(double width, double depth) implements Grip {}
}
