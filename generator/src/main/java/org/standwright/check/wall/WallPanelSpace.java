package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.unit.Units;

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

    private static final String ADVICE = " Ask your electrician; this is no legal advice.";

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.wall().walls().stream()
                .flatMap(cleated -> cleated.zones().stream()
                        .filter(zone -> zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL)
                        .flatMap(panel -> found(wall, cleated, panel).stream()))
                .toList();
    }

    private static List<Finding> found(HungWall wall, CleatedWall cleated, Zone panel) {
        var inTheWay = InTheWay.of(wall, cleated, before(panel.kept()), panel);
        return inTheWay.isEmpty()
                ? List.of(free(wall.units(), panel))
                : inTheWay.stream()
                        .map(what -> Finding.stop(
                                TEXT,
                                panel.name() + ", " + what,
                                what + " stands in the working space before '" + panel.name() + "', "
                                        + size(wall.units())
                                        + ", here taken as centred on it where the wall allows. Move it, or measure the"
                                        + " space to the panel's other side." + ADVICE))
                        .toList();
    }

    private static Finding free(Units units, Zone panel) {
        return Finding.note(
                TEXT,
                panel.name(),
                "Nothing of this design is before it. Keep all of its working space free, also the floor: "
                        + size(units) + "; nothing is stored there." + ADVICE);
    }

    private static String size(Units units) {
        return units.length(DEPTH) + " deep, " + units.length(WIDTH) + " wide or as wide as the panel, and "
                + units.length(HEIGHT) + " high or to its top";
    }

    /** In the wall's frame. */
    private static Box3 before(Rect space) {
        return new Box3(new Vec3(space.x0(), -DEPTH, space.y0()), new Vec3(space.x1(), 0, space.y1()));
    }
}
