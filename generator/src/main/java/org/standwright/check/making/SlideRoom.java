package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.fastener.DrawerCount;
import org.standwright.design.Hang;
import org.standwright.design.built.DrawerLayout;

/** Drawers too narrow or too shallow to be of use, and boxes lower than the slide beside them: the worst of each. */
public final class SlideRoom implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "slide-room",
            "Is there room in the drawers, and beside them for their slides?",
            "inside width at least 100 mm, inside height at least 40 mm, box at least as high as the slide's body",
            "",
            "common practice, no source");

    /** What a hand reaches into, mm. */
    private static final double NARROW = 100;
    /** What holds a tool, mm. */
    private static final double SHALLOW = 40;

    private static final List<Remedy> FEWER =
            List.of(Remedy.ofStand("one drawer less in each column", new DrawerCount(-1)::in));

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var drawers = stand.stand().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .toList();
        var units = stand.units();
        var findings = new ArrayList<Finding>();
        drawers.stream()
                .min(Comparator.comparingDouble(drawer -> drawer.inside().width()))
                .ifPresent(drawer -> findings.add(advised(
                        drawer,
                        drawer.inside().width(),
                        Limit.noteBelow(NARROW),
                        "The narrowest drawer is "
                                + units.length(drawer.inside().width()) + " wide inside.")));
        drawers.stream()
                .min(Comparator.comparingDouble(drawer -> drawer.inside().height()))
                .ifPresent(drawer -> findings.add(advised(
                                drawer,
                                drawer.inside().height(),
                                Limit.noteBelow(SHALLOW),
                                "The shallowest drawer holds things of "
                                        + units.length(drawer.inside().height()) + ".")
                        .remedies(FEWER)));
        if (stand.design().drawers().hang() instanceof Hang.Slides slides) {
            drawers.stream()
                    .min(Comparator.comparingDouble(drawer -> drawer.box().height()))
                    .ifPresent(drawer -> findings.add(advised(
                            drawer,
                            drawer.box().height(),
                            Limit.atLeast(slides.slide().bodyHeight()),
                            "The lowest box is " + units.length(drawer.box().height()) + " high, its slide "
                                    + units.length(slides.slide().bodyHeight()) + ".")));
        }
        return findings;
    }

    private static Finding advised(DrawerLayout drawer, double figure, Limit limit, String message) {
        return Finding.judged(TEXT, "drawer " + drawer.name(), new Gauge(Quantity.LENGTH, figure, limit), message);
    }
}
