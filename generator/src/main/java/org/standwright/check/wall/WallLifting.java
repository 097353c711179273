package org.standwright.check.wall;

import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.handling.Lift;

/** Lifting the heaviest holder onto its strip. */
public final class WallLifting implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "wall-lifting",
            "Who lifts the heaviest holder to its row?",
            "RWL = LC HM VM DM, as for the lifting of a stand",
            "Hands at the height of the row, 400 mm in front of the ankles, raised from 750 mm; above 15 kg it is worth a"
                    + " word.",
            Lift.SOURCE + "; 15 kg and 400 mm: our own choice");

    /** kg. */
    private static final double WORTH_A_WORD = 15;
    /** mm. */
    private static final double REACH = 400;

    private static final double FROM = 750;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.loads().stream()
                .max(Comparator.comparingDouble(HeldLoad::mass))
                .filter(load -> load.mass() > WORTH_A_WORD)
                .map(load -> found(wall, load))
                .stream()
                .toList();
    }

    private static Finding found(HungWall wall, HeldLoad load) {
        var units = wall.units();
        double height = load.holder().rowHeight();
        double limit = new Lift(REACH, height, Math.abs(height - FROM)).limit(units);
        var one = limit > 0
                ? "One person should lift " + units.mass(limit) + " to " + units.length(height) + "."
                : "Nothing should be lifted by hand to " + units.length(height) + ", beyond the equation's reach.";
        return Finding.note(
                        TEXT,
                        load.holder().name(),
                        "Full it weighs " + units.mass(load.mass()) + ", empty " + units.mass(load.wood()) + ". " + one
                                + " Hang it empty and fill it there, or take two persons.")
                .with(
                        new Input("m", "holder and things", Quantity.MASS, load.mass()),
                        new Input("V", "height of the row", Quantity.LENGTH, height),
                        new Input("RWL", "what one person should lift", Quantity.MASS, limit));
    }
}
