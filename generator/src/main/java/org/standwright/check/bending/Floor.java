package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.Weight;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Rect;

/**
 * The lowest layer of space in an opening that things can be put into: they lie on the level panel below it.
 *
 * @param opening seen from the front
 * @param ceiling underside of its lowest shelf, or its upper edge, mm
 */
record Floor(Rect opening, double ceiling) {
    /** Those of all openings without drawers; space kept clear for a vacuum counts, one may stand there. */
    static List<Floor> of(Stand stand) {
        return Compartment.of(stand.bays()).stream()
                .filter(compartment -> !(compartment.section() instanceof SectionLayout.Drawers))
                .map(Floor::of)
                .toList();
    }

    private static Floor of(Compartment compartment) {
        var opening = compartment.section().opening();
        var shelves = compartment.shelves();
        return new Floor(opening, shelves.isEmpty() ? opening.y1() : opening.y0() + shelves.get(0));
    }

    /** Whether this weight is what lies on it. */
    boolean bears(Weight weight) {
        var at = weight.centre();
        return weight.kind() == Weight.Kind.CONTENTS
                && weight.group().equals("carcass")
                && at.x() > opening.x0()
                && at.x() < opening.x1()
                && at.z() > opening.y0()
                && at.z() < ceiling;
    }
}
