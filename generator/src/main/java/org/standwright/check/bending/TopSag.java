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
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Severity;
import org.standwright.design.built.MachineLayout;

/** How far the top sags under its machine, in the worst of the spans between the uprights below it. */
public final class TopSag implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "top-sag",
            "Does the top sag under the machine?",
            "sag = sum of W b x (L^2 - b^2 - x^2) / (6 L E I) x (1 + kdef), at its greatest",
            "A strip as deep as the machine's base, less the widest hole in it, lies on the uprights beside it without being"
                    + " held down, bears the machine on its bolts or on the corners of its base, and itself. Glued worktop"
                    + " layers bend as one, worktop and sub-top slide on each other. Sides do not sink, nor do partitions on a"
                    + " bottom that is held below them, or in a housed carcass with its back glued in. Others sink: with glued or bolted joints top and bottom bend together"
                    + " from side to side, under all that is on either; with screws into edges, and over a divider, the top bears"
                    + " alone. The larger sag counts, between neighbours or over all that sinks; the latter only cautions, as what"
                    + " the back helps is left out. Feet on an overhang bend it by W a^3 / (3 E I) beyond the carcass. The"
                    + " machine stays for years.",
            "superposed beams, Wood Handbook FPL-GTR-190 chapter 9; creep EN 1995-1-1 table 3.2, as quoted; caution above"
                    + " 0.5 mm is shop practice, stop above 1.5 mm our own choice");

    private static final double CAUTION = 0.5;
    private static final Limit LIMIT = Limit.atMost(CAUTION, 1.5);

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
        if (TopStrip.under(machine, loaded.stand()).ofSubTop() > 0) {
            var spans = TopSpan.of(loaded, machine);
            spans.stream()
                    .max(Comparator.comparingDouble(TopSpan::sag))
                    .ifPresent(worst -> findings.add(finding(worst, limit(worst, spans), loaded)));
        }
        Overhang.of(loaded, machine).forEach(overhang -> findings.add(finding(overhang, loaded)));
        return findings;
    }

    /** Over what sinks it only cautions, unless some span between neighbours stops. */
    private static Limit limit(TopSpan worst, List<TopSpan> spans) {
        boolean stops = spans.stream().anyMatch(span -> span.isLocal() && LIMIT.of(span.sag()) == Severity.STOP);
        return worst.isLocal() || stops ? LIMIT : Limit.cautionAbove(CAUTION);
    }

    private static Finding finding(TopSpan worst, Limit limit, LoadedStand loaded) {
        var units = loaded.units();
        double sag = worst.sag();
        return Finding.judged(
                        TEXT,
                        "top",
                        new Gauge(Quantity.SAG, sag, limit),
                        "It sags " + Quantity.SAG.words(sag, units) + " "
                                + worst.words() + " in the course of years, under the machine of "
                                + units.mass(loaded.design().machine().mass()) + ".")
                .with(worst.sagging().inputs())
                .remedies(() -> worst.remedies(loaded));
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
}
