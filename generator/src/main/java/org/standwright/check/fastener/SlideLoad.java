package org.standwright.check.fastener;

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
import org.standwright.check.Weight;
import org.standwright.design.Hang;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Grid;

/** The heaviest drawer, full, against what its pair of slides is rated for; a very wide one is noted besides. */
public final class SlideLoad implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "slide-load",
            "Do the slides carry the fullest drawer?",
            "m = box + front + moving half of the slides + contents",
            "The contents weigh what the design says for each cubic metre of usable inside.",
            "the rating that the slide's maker gives");

    /** Box wider than slides are usually rated with, mm; common practice, no source. */
    private static final double WIDE = 600;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        if (stand.design().drawers().hang() instanceof Hang.Slides slides) {
            var drawers = drawers(stand);
            drawers.stream()
                    .max(Comparator.comparingDouble(drawer -> mass(stand, drawer)))
                    .ifPresent(heaviest -> findings.add(heaviest(stand, heaviest, slides.slide())));
            drawers.stream()
                    .max(Comparator.comparingDouble(drawer -> drawer.box().width()))
                    .filter(widest -> Grid.less(WIDE, widest.box().width()))
                    .ifPresent(widest -> findings.add(wide(stand, widest)));
        }
        return findings;
    }

    private static Finding heaviest(LoadedStand stand, DrawerLayout drawer, Slide slide) {
        double mass = mass(stand, drawer);
        double contents = stand.weights().stream()
                .filter(weight ->
                        weight.kind() == Weight.Kind.CONTENTS && weight.group().equals(group(drawer)))
                .mapToDouble(Weight::mass)
                .sum();
        var units = stand.units();
        var gauge = new Gauge(Quantity.MASS, mass, Limit.atMost(slide.rating()));
        return Finding.judged(
                        TEXT,
                        group(drawer),
                        gauge,
                        "The heaviest drawer weighs " + units.mass(mass) + " when it is full, " + units.mass(contents)
                                + " of it contents, on a pair of " + slide.name() + ".")
                .with(
                        new Input("m", "drawer, full", Quantity.MASS, mass),
                        new Input("contents", "contents", Quantity.MASS, contents))
                .remedies(List.of(Remedy.ofStand("one drawer more in each column", new DrawerCount(1)::in)));
    }

    private static Finding wide(LoadedStand stand, DrawerLayout drawer) {
        return Finding.note(
                TEXT,
                group(drawer),
                "Its box is " + stand.units().length(drawer.box().width())
                        + " wide. Slides are rated with narrower drawers: leave some of the rating unused.");
    }

    private static List<DrawerLayout> drawers(LoadedStand stand) {
        return stand.stand().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .filter(drawer -> drawer.slide().isPresent())
                .toList();
    }

    private static double mass(LoadedStand stand, DrawerLayout drawer) {
        return Masses.ofGroup(stand, group(drawer));
    }

    private static String group(DrawerLayout drawer) {
        return "drawer " + drawer.name();
    }
}
