package org.standwright.check.machine;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** A router under a plate is switched from outside, and its lift and lock are reached. Common practice, no source. */
public final class RouterSwitch implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("router-switch", "Is the router switched from outside?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().worktop().plate().stream()
                .map(plate -> Finding.caution(
                        TEXT,
                        plate.name(),
                        "Put a switch outside, on the operator's side, that is reached without looking; try before you "
                                + "build that the router's lift and lock are reached through the opening below it."))
                .toList();
    }
}
