package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;

/** A router under a plate is switched from outside, and its lift and lock are reached. Common practice, no source. */
final class RouterSwitch implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        return stand.design().worktop().plate().stream()
                .map(plate -> new Finding(
                        Severity.CAUTION,
                        "router-switch",
                        plate.name(),
                        "Put a switch outside, on the operator's side, that is reached without looking; try before you "
                                + "build that the router's lift and lock are reached through the opening below it.",
                        "common practice, no source"))
                .toList();
    }
}
