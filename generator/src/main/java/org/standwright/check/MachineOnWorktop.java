package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Stand;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Reference;
import org.standwright.geom.Grid;

/** The machine's base must stand on the worktop with all of its outline. Common practice, no source. */
final class MachineOnWorktop implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var design = stand.design();
        if (design.machine().reference().kind() == Reference.Kind.WORKTOP) {
            return List.of();
        }
        var over = design.worktop().overhang();
        var base = design.machine().base();
        var size = PlanSize.of(design);
        double left = (size.width() - base.width()) / 2 + Math.min(over.left(), over.right());
        double front = (size.depth() - base.depth()) / 2 + Math.min(over.front(), over.back());
        var findings = new ArrayList<Finding>();
        hangsOver(findings, stand, "wide", base.width(), left);
        hangsOver(findings, stand, "deep", base.depth(), front);
        return findings;
    }

    private static void hangsOver(List<Finding> findings, Stand stand, String way, double base, double margin) {
        if (Grid.less(margin, 0)) {
            var units = stand.design().unit();
            findings.add(new Finding(
                    Severity.STOP,
                    "machine-on-worktop",
                    stand.design().machine().name(),
                    "The machine's base is " + units.length(base) + " " + way + " and hangs over the worktop by "
                            + units.length(-margin) + " on a side. Make the plan or the overhang larger.",
                    "common practice, no source"));
        }
    }
}
