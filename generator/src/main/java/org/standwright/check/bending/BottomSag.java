package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** How far a bottom that stands on casters or levelers at its ends sags under its partitions. */
public final class BottomSag implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "bottom-sag",
            "Does the bottom sag between the casters or levelers?",
            "sag = sum of W b x (L^2 - b^2 - x^2) / (6 L E I) x (1 + kdef), at its greatest",
            "Of a carcass that is not housed, with its back glued in: that is a closed box, whose partitions do not sink. Lies on"
                    + " the strips along the sides, or on casters or levelers, without being held down; its layers slide on"
                    + " each other. Partitions that are glued or bolted to bottom and sub-top make both bend together, under"
                    + " all that is on either, the top less the widest of what is cut out of it; screwed into their edges they only press, and the bottom may sag away from them. What the back would take off is left"
                    + " out. Full for years.",
            ShelfSag.SOURCE);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return BottomSpan.of(loaded).stream().map(span -> finding(span, loaded)).toList();
    }

    private static Finding finding(Sagging span, LoadedStand loaded) {
        var units = loaded.units();
        return Finding.judged(
                        TEXT,
                        "bottom",
                        new Gauge(Quantity.SAG, span.sag(), ShelfSag.limit(span.length())),
                        "Over " + units.length(span.length()) + " " + span.gap().words() + " and under "
                                + units.force(span.load()) + " it sags " + Quantity.SAG.words(span.sag(), units)
                                + " in the course of years.")
                .with(span.inputs())
                .remedies(List.of(
                        Stiffer.doubledBottom(),
                        Stiffer.housed(),
                        Stiffer.thickerCarcass(loaded.design()),
                        Stiffer.plinth(loaded.design())));
    }
}
