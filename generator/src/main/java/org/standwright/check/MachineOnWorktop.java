package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;

/** The machine's base must stand on the worktop with all of its outline. Common practice, no source. */
final class MachineOnWorktop implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var findings = new ArrayList<Finding>();
        stand.machine().ifPresent(machine -> {
            var base = machine.base();
            var top = worktop(stand);
            hangsOver(findings, stand, "left", top.min().x() - base.min().x());
            hangsOver(findings, stand, "right", base.max().x() - top.max().x());
            hangsOver(findings, stand, "front", top.min().y() - base.min().y());
            hangsOver(findings, stand, "back", base.max().y() - top.max().y());
        });
        return findings;
    }

    private static Box3 worktop(Stand stand) {
        return Box3.around(stand.assembly().groups().stream()
                .filter(group -> group.name().equals("worktop"))
                .flatMap(group -> group.parts().stream())
                .map(PlacedPart::box)
                .toList());
    }

    private static void hangsOver(List<Finding> findings, Stand stand, String side, double over) {
        if (Grid.less(0, over)) {
            findings.add(new Finding(
                    Severity.STOP,
                    "machine-on-worktop",
                    stand.design().machine().name(),
                    "The machine's base hangs over the worktop by "
                            + stand.design().unit().length(over) + " at the " + side
                            + ". Change its margins, or make the plan or the overhang larger.",
                    "common practice, no source"));
        }
    }
}
