package org.standwright.design;

import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Slide;

/** What drawers run on. */
public sealed interface Hang {
    /** Side-mount slides. */
    record Slides(Slide slide) implements Hang {}

    /** Wooden runners below, kickers above and a stop behind, all cut from one bar. */
    record Runners(Bar bar) implements Hang {}
}
