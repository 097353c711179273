package org.standwright.check.wall;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.HungHolder;

/** Things that burn easily, above or beside what gets hot or throws sparks. */
public final class HangFlammable implements Rule<HungWall> {
    private static final RuleText TEXT = RuleText.plain(
            "hang-flammable",
            "Do things that burn hang away from sparks and heat?",
            "common practice, no source; 600 mm to the side: our own choice");

    /** mm. */
    private static final double BESIDE = 600;

    private static final Set<Obstacle.Kind> HOT =
            EnumSet.of(Obstacle.Kind.STAND, Obstacle.Kind.RADIATOR, Obstacle.Kind.ELECTRICAL_PANEL);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.wall().holders().stream()
                .filter(holder -> holder.made().holder().things().flammable())
                .map(holder -> found(wall, holder))
                .toList();
    }

    private static Finding found(HungWall wall, HungHolder holder) {
        var near = wall.wall().wall(holder.wall()).zones().stream()
                .filter(zone -> HOT.contains(zone.kind()) && isNear(zone, holder))
                .map(zone -> "'" + zone.name() + "'")
                .distinct()
                .collect(Collectors.joining(", "));
        return near.isEmpty()
                ? Finding.note(
                        TEXT,
                        holder.name(),
                        "Its things burn easily: keep them away from motors, grinders, heaters and panels, also those of"
                                + " the next wall, and store oily rags in a closed metal can.")
                : Finding.caution(
                                TEXT,
                                holder.name(),
                                "Its things burn easily and hang above or within "
                                        + wall.units().length(BESIDE) + " of " + near + ". Hang them elsewhere.")
                        .remedies(() -> wall.loads().stream()
                                .filter(load -> load.holder().equals(holder))
                                .flatMap(load -> new Stronger(wall).elsewhere(load).stream())
                                .toList());
    }

    /** Below it or beside it, seen from the room. */
    private static boolean isNear(Zone zone, HungHolder holder) {
        var area = holder.area();
        var hot = zone.itself();
        double apart = Math.max(area.x0() - hot.x1(), hot.x0() - area.x1());
        return apart <= BESIDE && hot.y0() < area.y1();
    }
}
