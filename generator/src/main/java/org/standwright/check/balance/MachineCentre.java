package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.MachineLayout;

/**
 * Every figure of stability depends on where the machine's centre of mass is; where nobody measured it, it is assumed.
 */
public final class MachineCentre implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "machine-centre",
            "Is the machine's centre of mass known?",
            "",
            "Both its place in the plan and its height: over the middle of its base, in two thirds of its height.",
            "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return loaded.design().machine().centreOfMass().isPresent()
                ? List.of()
                : loaded.stand().machine().map(machine -> finding(loaded, machine)).stream()
                        .toList();
    }

    private static Finding finding(LoadedStand loaded, MachineLayout machine) {
        return Finding.caution(
                TEXT,
                loaded.design().machine().name(),
                "Its centre of mass is not given. Assumed are its place in the plan, the middle of its base, and its "
                        + "height, "
                        + loaded.units().length(machine.centreOfMass().z())
                        + " above the floor: a motor or table at one side moves it there. Find both by lifting "
                        + "the machine in a sling, or from its maker, before you trust what is said about tipping.");
    }
}
