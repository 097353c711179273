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
import org.standwright.check.wall.statics.StripOverhang;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/** What hangs on the end of a strip, beyond its last screw. The screws there are counted with all others. */
public final class CleatOverhang implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-overhang",
            "Does the end of a strip bear what hangs on it?",
            "stress = 6 P c / (t s^2), sag = P c^2 (c + b) / (3 E I)",
            "All that hangs beyond the last screw hangs at the very end; the strip is as high as its short face s.",
            "beams: Wood Handbook FPL-GTR-190 chapter 9; a caution above 3 N/mm\u00b2, a stop above 6, and above 1/200 of the"
                    + " overhang: our own choice, below the bending strength of any board that strips are made of");

    private static final Limit STRESS = Limit.atMost(3, 6);
    /** Of the overhang. */
    private static final double SAG = 200;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var findings = new ArrayList<Finding>();
        for (var load : StripLoad.of(wall, HungBody.all(wall))) {
            var studs = load.strip().studs();
            int last = studs.size() - 1;
            var left = new Interval(load.strip().along().from(), studs.get(0));
            var right = new Interval(studs.get(last), load.strip().along().to());
            add(wall, load, "left end", left, studs.get(1) - studs.get(0), findings);
            add(wall, load, "right end", right, studs.get(last) - studs.get(last - 1), findings);
        }
        return findings;
    }

    private static void add(
            HungWall wall, StripLoad load, String end, Interval beyond, double back, List<Finding> findings) {
        double force = load.held().stream()
                .mapToDouble(piece -> piece.share()
                        * piece.body().hanging().weight()
                        * piece.along().overlap(beyond)
                        / piece.along().length())
                .sum();
        if (!Grid.less(0, force)) {
            return;
        }
        var cleat = wall.design().cleat();
        double modulus = cleat.sheet().material().elasticity().along();
        var overhang = new StripOverhang(beyond.length(), back, cleat.shortFace(), cleat.thickness(), modulus);
        var units = wall.units();
        var subject = load.strip().label() + ", " + end;
        var what = units.force(force) + " hang beyond the last screw, at most " + units.length(beyond.length())
                + " from it";
        var inputs = new Input[] {
            new Input("P", "beyond the last screw", Quantity.FORCE, force),
            new Input("c", "overhang", Quantity.LENGTH, beyond.length()),
            new Input("b", "to the next screw inward", Quantity.LENGTH, back),
            new Input("s", "short face", Quantity.LENGTH, cleat.shortFace()),
            new Input("E", "modulus along the strip", Quantity.STRESS, modulus)
        };
        double stress = overhang.stress(force);
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
