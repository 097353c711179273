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
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.kit.Slide;

/** Drawers much wider than what guides them is long rack and bind: the widest for its length of each bay. */
public final class WideDrawer implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "wide-drawer",
            "Do wide drawers rack?",
            "ratio = width / length",
            "A wide drawer is pushed at one end and turns between its slides or runners.",
            "common practice, no source");

    private static final double WIDEST = 1.5;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var findings = new ArrayList<Finding>();
        var bays = loaded.stand().bays();
        for (int i = 0; i < bays.size(); i++) {
            int place = i;
            bays.get(i).drawers().stream()
                    .max(Comparator.comparingDouble(WideDrawer::ratio))
                    .ifPresent(widest -> findings.add(finding(bays.get(place), place, widest, loaded)));
        }
        return findings;
    }

    private static Finding finding(BayLayout bay, int place, DrawerLayout widest, LoadedStand loaded) {
        var units = loaded.units();
        double width = widest.box().width();
        var gauge = new Gauge(Quantity.RATIO, ratio(widest), Limit.noteAbove(WIDEST));
        var words = "Its drawers are " + units.length(width) + " wide on "
                + (widest.slide().isPresent() ? "slides" : "runners") + " of " + units.length(guide(widest)) + ", "
                + Quantity.RATIO.words(ratio(widest), units) + " times as wide as long.";
        return Finding.judged(TEXT, "bay " + bay.name(), gauge, words)
                .with(
                        new Input("width", "of the box", Quantity.LENGTH, width),
                        new Input("length", "of its slides or its box", Quantity.LENGTH, guide(widest)))
                .remedies(List.of(Stiffer.partition(loaded.stand(), place)));
    }

    private static double ratio(DrawerLayout drawer) {
        return drawer.box().width() / guide(drawer);
    }

    /** What guides it, mm. */
    private static double guide(DrawerLayout drawer) {
        return drawer.slide().map(Slide.Size::length).orElse(drawer.box().depth());
    }
}
