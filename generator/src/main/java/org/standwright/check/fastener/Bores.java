package org.standwright.check.fastener;

import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.built.Stand;
import org.standwright.part.EdgeHole;
import org.standwright.part.Hole;

/** Holes of a stand's parts by what they are for. */
final class Bores {
    private Bores() {}

    /** Depth of the shallowest blind hole for this, mm. */
    static OptionalDouble shallowest(Stand stand, String purpose) {
        return stand.assembly().parts().stream()
                .flatMap(placed -> placed.part().features().stream())
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(hole -> hole.purpose().equals(purpose) && hole.depth().isPresent())
                .mapToDouble(hole -> hole.depth().getAsDouble())
                .min();
    }

    /** Where the edge holes of one part lie along its edge, rising, mm. */
    static List<Double> along(Stand stand, String label, String purpose) {
        return stand.assembly().parts().stream()
                .filter(placed -> placed.label().equals(label))
                .flatMap(placed -> placed.part().features().stream())
                .filter(EdgeHole.class::isInstance)
                .map(EdgeHole.class::cast)
                .filter(hole -> hole.purpose().equals(purpose))
                .map(EdgeHole::along)
                .sorted()
                .toList();
    }
}
