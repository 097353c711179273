package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.Obstacle;

/** The working space before an electrical panel. */
public final class WallPanelSpace implements Rule<HungWall> {
    private static final RuleText TEXT = RuleText.plain(
            "wall-panel-space",
            "Does the space before an electrical panel stay free?",
            "NEC 110.26(A) and IRC E3405, as quoted; no legal advice");

    /** 36 in, mm. */
    private static final double DEPTH = 914.4;

    /** 30 in, mm. */
    private static final double WIDTH = 762;

    /** 6 1/2 ft, mm. */
    private static final double HEIGHT = 1981.2;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var units = wall.units();
        return wall.wall().walls().stream()
                .flatMap(cleated -> cleated.zones().stream())
                .filter(zone -> zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL)
                .map(zone -> Finding.note(
                        TEXT,
                        zone.name(),
                        "No strip and no holder is before it. Keep all of its working space free, also the floor: "
                                + units.length(DEPTH) + " deep, " + units.length(WIDTH)
                                + " wide or as wide as the panel, and " + units.length(HEIGHT)
                                + " high or to its top; nothing is stored there. Ask your electrician; this is no legal"
                                + " advice."))
                .toList();
    }
}
