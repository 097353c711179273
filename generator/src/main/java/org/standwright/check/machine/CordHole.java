package org.standwright.check.machine;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Cutout;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Cord;
import org.standwright.geom.Grid;

/**
 * A cut-out whose use names the cord passes the plug: its diameter, of a rectangle the shorter side, is at least the
 * plug's widest size, mm. One of several is enough. Common practice, no source.
 */
public final class CordHole implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("cord-hole", "Does the plug go through?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().machine().cord().stream()
                .flatMap(cord -> check(stand.design(), cord).stream())
                .toList();
    }

    private static List<Finding> check(StandDesign design, Cord cord) {
        var widest = design.cutouts().stream()
                .filter(cutout -> NamedFor.names(cutout, "cord"))
                .mapToDouble(CordHole::passes)
                .max();
        if (widest.isEmpty() || !Grid.less(widest.getAsDouble(), cord.plug())) {
            return List.of();
        }
        var units = design.unit();
        return List.of(Finding.caution(
                TEXT,
                "cut-out for the cord",
                "It is " + units.length(widest.getAsDouble()) + " wide, but the plug of "
                        + design.machine().name() + " is " + units.length(cord.plug())
                        + ": it does not go through. Make it larger."));
    }

    private static double passes(Cutout cutout) {
        if (cutout instanceof Cutout.Round round) {
            return round.diameter();
        }
        var rectangle = (Cutout.Rectangular) cutout;
        return Math.min(rectangle.width(), rectangle.height());
    }
}
