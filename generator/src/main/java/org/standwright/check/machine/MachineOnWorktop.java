package org.standwright.check.machine;

import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.geom.Grid;

/**
 * The machine's base must stand on the worktop with all of its outline. Says on which side it hangs over and by how
 * much, mm. Common practice, no source.
 */
public final class MachineOnWorktop implements Rule<LoadedStand> {
    private static final RuleText TEXT = RuleText.plain(
            "machine-on-worktop",
            "Does the machine stand on the worktop with all of its base?",
            "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.machine().stream()
                .flatMap(machine -> hangsOver(stand, machine).stream())
                .toList();
    }

    private static List<Finding> hangsOver(Stand stand, MachineLayout machine) {
        var top = stand.worktop();
        var base = machine.base();
        var over = new LinkedHashMap<Side, Double>();
        over.put(Side.FRONT, top.min().y() - base.min().y());
        over.put(Side.RIGHT, base.max().x() - top.max().x());
        over.put(Side.BACK, base.max().y() - top.max().y());
        over.put(Side.LEFT, top.min().x() - base.min().x());
        return over.entrySet().stream()
                .filter(side -> Grid.less(0, side.getValue()))
                .map(side -> finding(stand, side.getKey(), side.getValue()))
                .toList();
    }

    private static Finding finding(Stand stand, Side side, double over) {
        return Finding.stop(
                TEXT,
                stand.design().machine().name(),
                "The machine's base hangs over the worktop by "
                        + stand.design().unit().length(over) + " at the " + Facing.word(side)
                        + ". Move the machine, or make the plan or the overhang larger.");
    }
}
