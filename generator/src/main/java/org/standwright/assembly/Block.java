package org.standwright.assembly;

import org.standwright.geom.Box3;

/** A bought thing as a plain block: enough to see it, and to keep wood clear of it. */
public record Block(String label, Kind kind, Box3 box) {
    public enum Kind {
        MACHINE,
        CASTER,
        LEVELER,
        PAD,
        SLIDE,
        HINGE,
        BOLT,
        PLATE
    }
}
