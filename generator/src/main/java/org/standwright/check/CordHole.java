package org.standwright.check;

import java.util.List;
import org.standwright.design.Cutout;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Cord;
import org.standwright.geom.Grid;

/**
 * A cut-out whose use names the cord passes the plug: its diameter, of a rectangle the shorter side, is at least the
 * plug's widest size, mm. One of several is enough. Common practice, no source.
 */
final class CordHole implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
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
        return List.of(new Finding(
                Severity.CAUTION,
                "cord-hole",
                "cut-out for the cord",
                "It is " + units.length(widest.getAsDouble()) + " wide, but the plug of "
                        + design.machine().name() + " is " + units.length(cord.plug())
                        + ": it does not go through. Make it larger.",
                "common practice, no source"));
    }

    private static double passes(Cutout cutout) {
        if (cutout instanceof Cutout.Round round) {
            return round.diameter();
        }
        var rectangle = (Cutout.Rectangular) cutout;
        return Math.min(rectangle.width(), rectangle.height());
    }
}
