package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.ScrewLoad;

/** What draws the heads through the strips. Only round heads and washers are rated. */
public final class CleatPullThrough implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-pull-through",
            "Are the heads drawn through the strips?",
            "WH = 0.9 x 690 pi DH G^2 t, lbf and inches; t what is left of the strip under the head",
            RatedStrip.ASSUMED + " The rule is for round heads; a washer counts as one of its diameter.",
            RatedStrip.STATICS + "pull-through, NDS 2018 Eq. 12.2-6a and b, as quoted");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var strips = RatedStrip.of(wall);
        if (strips.isEmpty()) {
            return List.of();
        }
        return strips.get(0).screw().pullThrough().isPresent()
                ? strips.stream().map(strip -> found(wall, strip)).toList()
                : List.of(Finding.note(TEXT, "heads of the wall screws", unrated(wall)));
    }

    private static String unrated(HungWall wall) {
        return wall.design().fixing().washer().isEmpty()
                ? "Not rated: the rule is for round heads, and these are countersunk. They hold less than a washer head."
                : "Not rated: the rule is for strips of 5/16 to 1 1/2 in under the head, and here it is "
                        + wall.units().length(wall.wall().screwing().under()) + ".";
    }

    private static Finding found(HungWall wall, RatedStrip strip) {
        var units = wall.units();
        var worst = strip.worst(ScrewLoad::out);
        double most = strip.screw().pullThrough().orElseThrow();
        var message = strip.where(worst, units) + "a head is drawn with "
                + units.force(worst.load().out()) + ", and the strip holds " + units.force(most) + ".";
        return strip.judged(
                        TEXT,
                        worst,
                        new Gauge(Quantity.FORCE, worst.load().out(), RatedStrip.limit(most)),
                        message,
                        units)
                .with(new Input(
                        "t",
                        "strip under the head",
                        Quantity.LENGTH,
                        wall.wall().screwing().under()))
                .remedies(() -> remedies(wall));
    }

    private static List<Remedy> remedies(HungWall wall) {
        var stronger = new Stronger(wall);
        var remedies = new ArrayList<>(stronger.washers());
        remedies.add(stronger.second());
        return remedies;
    }
}
