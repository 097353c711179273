package org.standwright.design.built;

import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Assembly;
import org.standwright.design.StandDesign;
import org.standwright.geom.Box3;

/**
 * A stand worked out from its design.
 *
 * @param design as its maker wrote it
 * @param carcass the box between the outsides of the two side panels, without worktop, fronts and support
 */
public record Stand(
        StandDesign design,
        HeightStack stack,
        Box3 carcass,
        List<BayLayout> bays,
        Optional<MachineLayout> machine,
        Assembly assembly) {
    public Stand {
        bays = List.copyOf(bays);
    }
}
