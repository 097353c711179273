package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.built.BayLayout;

/** What keeps a stand from tipping besides its own weight: ballast, interlocks, anchors. */
final class SteadyHardware {
    /** Points at which a stand is fixed: two at the top of its back, or four at its foot; common practice, no source. */
    private static final int TO_WALL = 2;

    private static final int TO_FLOOR = 4;

    private final StandDesign design;

    SteadyHardware(StandDesign design) {
        this.design = design;
    }

    List<Hardware> list(List<BayLayout> bays) {
        var list = new ArrayList<Hardware>();
        var steady = design.steady();
        if (steady.ballast() > 0) {
            list.add(new Hardware(
                    "ballast, " + design.unit().mass(steady.ballast()) + ": steel, or sand in closed boxes",
                    1,
                    "fixed under the middle of the bottom so that it cannot shift"));
        }
        if (steady.interlock()) {
            bays.stream()
                    .filter(bay -> bay.drawers().size() > 1)
                    .forEach(bay -> list.add(new Hardware(
                            "mechanical drawer interlock, lets one of "
                                    + bay.drawers().size() + " drawers open",
                            1,
                            "bay " + bay.name())));
        }
        if (steady.anchor() == Steady.Anchor.WALL) {
            list.add(new Hardware(
                    "steel angle with fasteners rated by their maker for your wall",
                    TO_WALL,
                    "top of the carcass to studs or masonry behind it, never to drywall alone"));
        }
        if (steady.anchor() == Steady.Anchor.FLOOR) {
            list.add(new Hardware(
                    "steel angle with fasteners rated by their maker for your floor", TO_FLOOR, "foot to the floor"));
        }
        return list;
    }
}
