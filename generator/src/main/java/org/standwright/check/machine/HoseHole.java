package org.standwright.check.machine;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Cutout;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.DustPort;
import org.standwright.geom.Grid;

/**
 * The way of a dust hose: a round cut-out whose use names a hose has at least its outside diameter + 6 mm; a dust port
 * needs some way for a hose at all, a cut-out or a bay kept clear. Common practice, no source.
 */
public final class HoseHole implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("hose-hole", "Does the hose go through?", "common practice, no source");

    /** Play of a hose in its hole, mm. */
    private static final double PLAY = 6;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().machine().dustPort().stream()
                .flatMap(port -> check(stand.design(), port).stream())
                .toList();
    }

    private static List<Finding> check(StandDesign design, DustPort port) {
        var findings = new ArrayList<Finding>();
        if (design.cutouts().isEmpty() && ClearContents.of(design).isEmpty()) {
            findings.add(Finding.note(
                    TEXT,
                    design.machine().name(),
                    "It has a dust port, but the stand has neither a cut-out nor a bay kept clear for a hose of "
                            + design.unit().length(port.hose()) + ": it has to go round the outside."));
        }
        double least = port.hose() + PLAY;
        for (var cutout : design.cutouts()) {
            if (cutout instanceof Cutout.Round round
                    && NamedFor.names(round, "hose")
                    && Grid.less(round.diameter(), least)) {
                findings.add(tight(design, round, port.hose()));
            }
        }
        return findings;
    }

    private static Finding tight(StandDesign design, Cutout.Round round, double hose) {
        var units = design.unit();
        return Finding.caution(
                TEXT,
                "cut-out for " + round.use(),
                "The hole of " + units.length(round.diameter()) + " is too tight for a hose of " + units.length(hose)
                        + ": it takes " + units.length(hose + PLAY) + " or more.");
    }
}
