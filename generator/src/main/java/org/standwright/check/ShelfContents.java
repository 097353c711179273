package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** What lies in open and closed bays, on their floors and on every shelf; space kept clear stays empty. */
final class ShelfContents {
    /** Not more than 200 lb on one shelf: Architectural Woodwork Standards 2009, section 10. */
    private static final double MOST = 90.7;

    private final Stand stand;

    ShelfContents(Stand stand) {
        this.stand = stand;
    }

    List<Weight> all() {
        var weights = new ArrayList<Weight>();
        for (var compartment : Compartment.of(stand.bays())) {
            var section = compartment.section();
            if (section instanceof SectionLayout.Open || section instanceof SectionLayout.Closed) {
                layers(compartment, weights);
            }
        }
        return weights;
    }

    private void layers(Compartment compartment, List<Weight> weights) {
        var opening = compartment.section().opening();
        double shelf = stand.design().carcass().sheet().material().thickness();
        var undersides = compartment.shelves();
        double floor = opening.y0();
        for (int i = 0; i <= undersides.size(); i++) {
            boolean last = i == undersides.size();
            double ceiling = last ? opening.y1() : opening.y0() + undersides.get(i);
            var where = i == 0 ? "floor of bay " : "shelf " + i + " of bay ";
            weights.add(layer(where + compartment.bay(), opening, floor, ceiling));
            floor = ceiling + shelf;
        }
    }

    /** No more than the shelf is reckoned for, and no more than as dense as in a drawer. */
    private Weight layer(String where, Rect opening, double floor, double ceiling) {
        var loads = stand.design().loads();
        var carcass = stand.carcass();
        double area = opening.width() * carcass.size().y() * 1e-6;
        double mass =
                Math.min(Math.min(area * loads.shelves(), MOST), area * (ceiling - floor) * 1e-3 * loads.drawers());
        var centre =
                new Vec3((opening.x0() + opening.x1()) / 2, carcass.centre().y(), (floor + ceiling) / 2);
        return new Weight("things on the " + where, Weight.Kind.CONTENTS, "carcass", mass, centre);
    }
}
