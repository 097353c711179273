package org.standwright.file;

import org.standwright.design.kit.Edging;

/** An edging as a file writes it: "kind" says there what the whole file describes. */
record EdgingFields(String name, Edging.Kind style, double thickness) {

    Edging toEdging() {
        return new Edging(name, style, thickness);
    }
}
