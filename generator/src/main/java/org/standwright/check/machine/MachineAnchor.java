package org.standwright.check.machine;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.kit.Reference;

/**
 * Machines meant for a fixed location are anchored against walking and moving (29 CFR 1910.212(b)). Noted for a machine
 * on the worktop of which no bolt holes are known; one that is part of the worktop has no base to bolt down.
 */
public final class MachineAnchor implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("machine-anchor", "Is the machine bolted down?", "29 CFR 1910.212(b)");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var machine = stand.design().machine();
        if (machine.mounting().isPresent() || machine.reference().kind() == Reference.Kind.WORKTOP) {
            return List.of();
        }
        return List.of(Finding.note(
                TEXT,
                machine.name(),
                "No bolt holes are given for it. Bolt it down to the worktop, as its manual says, before you use it: "
                        + "a machine meant for a fixed place must not walk or tip."));
    }
}
