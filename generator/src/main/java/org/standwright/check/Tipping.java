package org.standwright.check;

import java.util.List;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;

/** Says what is not worked out, so that nobody takes silence for safety. */
final class Tipping implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        return List.of(new Finding(
                Severity.CAUTION,
                "tipping",
                "whole stand",
                "Tipping is not worked out here. Put heavy things low, open one drawer at a time, and " + held(stand)
                        + " before use.",
                "29 CFR 1910.212(b): machines meant for a fixed place are anchored, portable bases locked"));
    }

    private static String held(Stand stand) {
        return stand.design().support() instanceof Support.Casters
                ? "lock all casters or lift the stand off them"
                : "anchor the stand to the floor or to studs";
    }
}
