package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Cutout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;

/** A hole for the machine's dust hose is 6 mm wider than the hose (shop practice, common practice, no source). */
final class HoseHole implements Rule {
    private static final double PLAY = 6;

    @Override
    public List<Finding> check(Stand stand, Load load) {
        var findings = new ArrayList<Finding>();
        stand.design().machine().dustPort().ifPresent(port -> {
            var cutouts = stand.design().cutouts();
            for (int i = 0; i < cutouts.size(); i++) {
                if (cutouts.get(i).use().contains("hose")) {
                    tight(findings, stand, i + 1, size(cutouts.get(i)), port.hose());
                }
            }
        });
        return findings;
    }

    private static double size(Cutout cutout) {
        if (cutout instanceof Cutout.Round round) {
            return round.diameter();
        }
        var size = (Cutout.Rectangular) cutout;
        return Math.min(size.width(), size.height());
    }

    private static void tight(List<Finding> findings, Stand stand, int number, double hole, double hose) {
        if (Grid.less(hole, hose + PLAY)) {
            var units = stand.design().unit();
            findings.add(new Finding(
                    Severity.CAUTION,
                    "hose-hole",
                    "cut-out " + number,
                    "It is " + units.length(hole) + " wide for a hose of " + units.length(hose) + ". Make it "
                            + units.length(hose + PLAY) + ".",
                    "common practice, no source"));
        }
    }
}
