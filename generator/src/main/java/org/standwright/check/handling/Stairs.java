package org.standwright.check.handling;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/**
 * Whether the stand goes up or down the stairs that its maker measured, and what two persons then carry. The machine
 * never goes with it. The equation is made for level floors: what it allows is the most that stairs can allow.
 */
public final class Stairs implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "stairs",
            "Does the stand go up or down the stairs?",
            WayThrough.FORMULA + "; " + Lift.FORMULA,
            "Clear width, and height above the steps, as entered; turns on a landing are not looked at. The machine is"
                    + " off, the drawers are out. Two persons carry half each, at hand height; the lower one bears more.",
            "geometry of the boxes around it; " + Lift.SOURCE);

    private static final int PERSONS = 2;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        stand.design().site().stairs().ifPresent(stairs -> {
            var carried = new EmptyStand(stand);
            var ways = carried.loads().stream().skip(1).toList();
            findings.addAll(new WayThrough(TEXT, "the stairs", stairs, stand).findings(ways));
            double mass = carried.heaviestLoad();
            var message = "Two persons carry " + stand.units().mass(mass)
                    + (carried.comesApart() ? ", the heaviest part of it taken apart." : ", its drawers taken out.");
            StandLifting.BY_HAND
                    .judged(TEXT, "weight on the stairs", message, mass, PERSONS, stand.units())
                    .ifPresent(findings::add);
        });
        return findings;
    }
}
