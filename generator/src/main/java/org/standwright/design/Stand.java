package org.standwright.design;

import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.geom.Box3;

/**
 * A stand worked out from its design.
 *
 * @param carcass the box between the outsides of the two side panels, without worktop, fronts and support
 */
public record Stand(StandDesign design, HeightStack stack, Box3 carcass, List<BayLayout> bays, Assembly assembly) {
    public Stand {
        bays = List.copyOf(bays);
    }
}
