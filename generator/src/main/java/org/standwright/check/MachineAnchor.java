package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Reference;

/**
 * Machines meant for a fixed location are anchored against walking and moving (29 CFR 1910.212(b)). Noted for a machine
 * on the worktop of which no bolt holes are known; one that is part of the worktop has no base to bolt down.
 */
final class MachineAnchor implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var machine = stand.design().machine();
        if (machine.mounting().isPresent() || machine.reference().kind() == Reference.Kind.WORKTOP) {
            return List.of();
        }
        return List.of(new Finding(
                Severity.NOTE,
                "machine-anchor",
                machine.name(),
                "No bolt holes are given for it. Bolt it down to the worktop, as its manual says, before you use it: "
                        + "a machine meant for a fixed place must not walk or tip.",
                "29 CFR 1910.212(b)"));
    }
}
