package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.MachineLayout;
import org.standwright.geom.Box3;

/** How far the top sags under its machine, in the worst of the spans between the uprights below it. */
public final class TopSag implements Rule {
    private static final RuleText TEXT = new RuleText(
            "top-sag",
            "Does the top sag under the machine?",
            "sag = sum of W b x (L^2 - b^2 - x^2) / (6 L E I) x (1 + kdef), at its greatest",
            "A strip as deep as the machine's base lies on the uprights beside it without being held down, bears the"
                    + " machine on its bolts or on the corners of its base, and itself. Glued worktop layers bend as one,"
                    + " worktop and sub-top slide on each other. The uprights do not sink; what is cut out of the top is left out."
                    + " Feet on an overhang bend it by W a^3 / (3 E I) beyond the carcass. The machine stays for years.",
            "superposed beams, Wood Handbook FPL-GTR-190 chapter 9; creep EN 1995-1-1 table 3.2, as quoted; caution above"
                    + " 0.5 mm is shop practice, stop above 1.5 mm our own choice");

    private static final Limit LIMIT = Limit.atMost(0.5, 1.5);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return loaded.stand()
                .machine()
                .map(machine -> findings(machine, loaded))
                .orElseGet(List::of);
    }

    private static List<Finding> findings(MachineLayout machine, LoadedStand loaded) {
        var findings = new ArrayList<Finding>();
        spans(loaded, machine).stream()
                .max(Comparator.comparingDouble(Sagging::sag))
                .ifPresent(worst -> findings.add(finding(worst, loaded)));
        Overhang.of(loaded, machine).forEach(overhang -> findings.add(finding(overhang, loaded)));
        return findings;
    }

    /** Nothing where the base does not reach over the sub-top. */
    private static List<Sagging> spans(LoadedStand loaded, MachineLayout machine) {
        var stand = loaded.stand();
        var top = TopLayers.of(stand);
        double onWorktop = overlap(machine.base(), stand.worktop());
        double onSubTop = overlap(machine.base(), top.subTop().box());
        var spans = new ArrayList<Sagging>();
        if (onSubTop <= 0) {
            return spans;
        }
        var feet = MachineFeet.of(loaded);
        for (var gap : Uprights.of(stand).gaps(top.subTop().box().min().z())) {
            var loads = new ArrayList<SpanLoad>();
            feet.stream()
                    .filter(foot -> gap.holds(foot.x()))
                    .forEach(foot -> loads.add(SpanLoad.point(foot.x() - gap.x0(), foot.force())));
            loads.add(new SpanLoad(0, gap.length(), top.weight(onWorktop, onSubTop) * gap.length()));
            spans.add(new Sagging(
                    gap, new SimpleSpan(gap.length(), top.stiffness(onWorktop, onSubTop), loads), top.creep()));
        }
        return spans;
    }

    private static double overlap(Box3 a, Box3 b) {
        return Math.min(a.max().y(), b.max().y())
                - Math.max(a.min().y(), b.min().y());
    }

    private static Finding finding(Sagging worst, LoadedStand loaded) {
        var units = loaded.units();
        double sag = worst.sag();
        return Finding.judged(
                        TEXT,
                        "top",
                        new Gauge(Quantity.SAG, sag, LIMIT),
                        "It sags " + Quantity.SAG.words(sag, units) + " "
                                + worst.gap().words() + " in the course of years, under the machine of "
                                + units.mass(loaded.design().machine().mass()) + ".")
                .with(worst.inputs())
                .remedies(() -> remedies(worst, loaded));
    }

    private static Finding finding(Overhang overhang, LoadedStand loaded) {
        var units = loaded.units();
        return Finding.judged(
                        TEXT,
                        overhang.where(),
                        new Gauge(Quantity.SAG, overhang.sag(), LIMIT),
                        "Under the machine's feet, " + units.length(overhang.reach()) + " beyond the carcass, it sags "
                                + Quantity.SAG.words(overhang.sag(), units) + " in the course of years.")
                .with(
                        new Input("W", "on its feet there", Quantity.FORCE, overhang.force()),
                        new Input("a", "beyond the carcass", Quantity.LENGTH, overhang.reach()),
                        new Input("E I", "stiffness", Quantity.STIFFNESS, overhang.stiffness()))
                .remedies(List.of(Stiffer.secondLayer(), Stiffer.thickerWorktop(loaded.design())));
    }

    private static List<Remedy> remedies(Sagging worst, LoadedStand loaded) {
        var remedies = new ArrayList<Remedy>();
        remedies.add(Stiffer.secondLayer());
        remedies.addAll(Stiffer.partitions(loaded.stand(), worst.gap()));
        remedies.add(Stiffer.thickerWorktop(loaded.design()));
        remedies.add(Stiffer.thickerCarcass(loaded.design()));
        return remedies;
    }
}
