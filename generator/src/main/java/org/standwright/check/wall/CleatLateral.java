package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.ScrewLoad;

/** What the worst screw of each strip carries across, with the plasterboard as a gap. */
public final class CleatLateral implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-lateral",
            "Do the screws carry the strips without bending?",
            "Fv = sum of s W / n, the strip's own with it; Z' = 0.9 x the least of six modes of yielding across the gap g, over Rd",
            RatedStrip.ASSUMED + " Plasterboard counts as a gap.",
            RatedStrip.STATICS
                    + "yield modes of NDS 2018 12.3.1, as quoted; with a gap in the manner of AWC TR 12, from"
                    + " memory");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return RatedStrip.of(wall).stream().map(strip -> found(wall, strip)).toList();
    }

    private static Finding found(HungWall wall, RatedStrip strip) {
        var units = wall.units();
        var worst = strip.worst(ScrewLoad::sideways);
        double most = strip.screw().lateral();
        var message = strip.where(worst, units) + "a screw carries "
                + units.force(worst.load().sideways()) + " across, and may carry " + units.force(most) + ".";
        return strip.partOf(TEXT, worst, worst.load().sideways(), most, message, wall)
                .with(new Input(
                        "g",
                        "gap between strip and stud",
                        Quantity.LENGTH,
                        strip.screw().through().gap()));
    }
}
