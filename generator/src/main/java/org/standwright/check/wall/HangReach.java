package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.wall.Things;

/** Things that hands go to often, out of easy reach, and heavy ones overhead. */
public final class HangReach implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hang-reach",
            "Is it within reach?",
            "",
            "Reach: from 300 mm below the elbow up to the eyes, at the middle of the things; heavy: 10 kg of things.",
            "common practice, no source; the limits are our own choice");

    /** How far below the elbow a hand reaches without bending, mm. */
    private static final double BELOW = 300;
    /** kg. */
    private static final double HEAVY = 10;

    private static final Set<Things.Use> OFTEN = EnumSet.of(Things.Use.DAILY, Things.Use.WEEKLY);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var findings = new ArrayList<Finding>();
        for (var load : wall.loads()) {
            look(wall, load, findings);
        }
        return findings;
    }

    private static void look(HungWall wall, HeldLoad load, List<Finding> findings) {
        var units = wall.units();
        var person = wall.design().person();
        var holder = load.holder();
        double height = holder.rowHeight() + holder.made().thingsCentre().z();
        boolean above = height > person.eye();
        boolean out = above || height < person.elbow() - BELOW;
        var at = "Its things are " + units.length(height) + " above the floor, ";
        if (above && load.things() > HEAVY) {
            findings.add(Finding.caution(
                            TEXT,
                            holder.name(),
                            at + "over the eyes at " + units.length(person.eye()) + ", and weigh "
                                    + units.mass(load.things()) + ". Hang heavy things lower.")
                    .remedies(() -> new Stronger(wall).elsewhere(load).stream().toList()));
        } else if (out && OFTEN.contains(holder.made().holder().things().use())) {
            findings.add(Finding.note(
                    TEXT,
                    holder.name(),
                    at + "out of easy reach, " + units.length(person.elbow() - BELOW) + " to "
                            + units.length(person.eye()) + ", and are often taken."));
        }
    }
}
