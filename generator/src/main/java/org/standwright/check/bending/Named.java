package org.standwright.check.bending;

import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;

/** Parts of a stand by their labels. */
final class Named {
    private Named() {}

    /** @throws java.util.NoSuchElementException when nothing is labelled so */
    static PlacedPart part(Stand stand, String label) {
        return stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
