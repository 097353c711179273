package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.built.CleatedWall;

/** Walls whose screws no source here rates: what pulls on them is said, and what they hold is the anchor maker's to say.
 * Also strips, screws and bevels that are not rated. */
public final class CleatFraming implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-framing",
            "Is there a source for what the wall holds?",
            "Fw and Fv as in cleat-withdrawal and cleat-lateral",
            "Wood studs only are rated here, with strips of plywood, OSB or solid wood, screws of #6 or thicker and bevels"
                    + " of 30 to 45 degrees.",
            "no source for steel studs, masonry and other boards; statics: our own derivation");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var loads = StripLoad.of(wall, HungBody.all(wall));
        var findings = new ArrayList<Finding>();
        for (var cleated : wall.wall().walls()) {
            if (!cleated.strips().isEmpty()) {
                why(wall, cleated).ifPresent(why -> findings.add(found(wall, cleated, why, loads)));
            }
        }
        return findings;
    }

    private static Optional<String> why(HungWall wall, CleatedWall cleated) {
        var screw = new StripScrew(wall);
        var framing = cleated.wall().framing();
        if (!new CleatSection(wall.design().cleat()).isRated()) {
            return Optional.of(
                    "Bevels of " + Quantity.ANGLE.words(wall.design().cleat().tilt(), wall.units())
                            + " are not rated, only 30 to 45.");
        }
        if (framing instanceof Framing.SteelStuds) {
            return Optional.of("No capacity of a screw in steel studs is known here: take it from the data of the"
                    + " anchor's maker.");
        }
        if (framing instanceof Framing.Masonry masonry) {
            return Optional.of("No capacity of '" + masonry.anchor()
                    + "' in this wall is known here: take it from the data of the anchor's maker.");
        }
        if (screw.numbered().isEmpty()) {
            return Optional.of("Screws thinner than #6, 3.5 mm, are not rated: take thicker ones.");
        }
        return screw.strip().isEmpty()
                ? Optional.of("Strips of "
                        + wall.design().cleat().sheet().material().name() + " are not rated: take plywood.")
                : Optional.empty();
    }

    private static Finding found(HungWall wall, CleatedWall cleated, String why, List<StripLoad> loads) {
        var units = wall.units();
        var screws = loads.stream()
                .filter(load -> load.wall().number() == cleated.number())
                .flatMap(load -> load.perStud().stream())
                .toList();
        if (screws.isEmpty()) {
            return Finding.caution(TEXT, cleated.wall().name(), why);
        }
        double out = screws.stream().mapToDouble(ScrewLoad::out).max().orElseThrow();
        double across = screws.stream().mapToDouble(ScrewLoad::sideways).max().orElseThrow();
        return Finding.caution(
                        TEXT,
                        cleated.wall().name(),
                        why + " The worst screw must hold a pull of " + units.force(out) + " and a shear of "
                                + units.force(across) + " for good; these are loads, not what it holds.")
                .with(
                        new Input("Fw", "largest pull on a screw", Quantity.FORCE, out),
                        new Input("Fv", "largest load across one", Quantity.FORCE, across));
    }
}
