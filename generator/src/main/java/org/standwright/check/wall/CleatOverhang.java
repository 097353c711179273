package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** What hangs on the end of a strip, beyond its last screw. The screws there are counted with all others. */
public final class CleatOverhang implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-overhang",
            "Does the end of a strip bear what hangs on it?",
            "stress = 6 P c / (t s^2), sag = P c^2 (c + b) / (3 E I)",
            "All that hangs beyond the last screw hangs at the very end; the strip is as high as its short face s.",
            "beams: Wood Handbook FPL-GTR-190 chapter 9; a caution above 3 N/mm\u00b2, a stop above 6, and above 1/200 of the"
                    + " overhang: our own choice, below the bending strength of any board that strips are made of");

    private static final Limit STRESS = Limit.atMost(3, StripEnd.MOST);
    /** Of the overhang. */
    private static final double SAG = 200;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var findings = new ArrayList<Finding>();
        StripLoad.of(wall, HungBody.all(wall))
                .forEach(load -> StripEnd.of(load).forEach(end -> add(wall, end, findings)));
        return findings;
    }

    private static void add(HungWall wall, StripEnd end, List<Finding> findings) {
        var load = end.load();
        double force = end.force();
        var beyond = end.beyond();
        var overhang = end.overhang();
        var units = wall.units();
        var subject = load.strip().label() + ", " + end.name();
        var what = units.force(force) + " hang beyond the last screw, at most " + units.length(beyond.length())
                + " from it";
        var inputs = new Input[] {
            new Input("P", "beyond the last screw", Quantity.FORCE, force),
            new Input("c", "overhang", Quantity.LENGTH, beyond.length()),
            new Input("b", "to the next screw inward", Quantity.LENGTH, end.back()),
            new Input("s", "short face", Quantity.LENGTH, end.cleat().shortFace()),
            new Input("E", "modulus along the strip", Quantity.STRESS, end.modulus())
        };
        double stress = end.stress();
        findings.add(Finding.judged(
                        TEXT,
                        subject,
                        new Gauge(Quantity.STRESS, stress, STRESS),
                        what + ", and bend it with " + Quantity.STRESS.words(stress, units) + ".")
                .with(inputs)
                .remedies(() -> new Stronger(wall).elsewhere(load)));
        double sag = overhang.deflection(force);
        findings.add(Finding.judged(
                        TEXT,
                        subject + ", its sag",
                        new Gauge(Quantity.SAG, sag, Limit.cautionAbove(beyond.length() / SAG)),
                        what + ", and bend it down " + Quantity.SAG.words(sag, units) + ".")
                .with(inputs)
                .remedies(() -> new Stronger(wall).elsewhere(load)));
    }
}
