package org.standwright.check;

import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;

/** The box around the worktop as it was built: all parts labelled so, whatever they were put together from. */
final class WorktopBox {
    private WorktopBox() {}

    static Box3 of(Stand stand) {
        return Box3.around(stand.assembly().parts().stream()
                .filter(part -> part.label().startsWith("worktop"))
                .map(PlacedPart::box)
                .toList());
    }
}
