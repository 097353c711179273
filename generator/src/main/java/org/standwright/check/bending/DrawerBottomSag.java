package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** How far drawer bottoms sag under what the drawers hold: the worst of each bay. */
public final class DrawerBottomSag implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "drawer-bottom",
            "Do the drawer bottoms sag?",
            "sag = alpha q b^4 / (E t^3) x (1 + kdef)",
            "A plate on its four edges, free to turn in its groove, evenly loaded for years. Up to twice as long as wide it"
                    + " has the smaller modulus of both directions, beyond that it is a strip across its short side. Its"
                    + " edges slide in the groove.",
            "Lévy's series, as in Roark table 11.4 case 1a; creep EN 1995-1-1 table 3.2, as quoted; note at L/144, what is"
                    + " allowed for shelves, Architectural Woodwork Standards 2009; stop 2 mm above what is below it, our own choice");

    /** To leave between a sagging bottom and what is below it, mm; our own choice. */
    private static final double CLEAR = 2;

    private static final double SPAN_SHARE = 144;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var findings = new ArrayList<Finding>();
        var bottoms = DrawerBottom.of(loaded);
        for (int i = 0; i < loaded.stand().bays().size(); i++) {
            var drawers = loaded.stand().bays().get(i).drawers();
            int bay = i;
            bottoms.stream()
                    .filter(bottom -> drawers.contains(bottom.drawer()))
                    .max(Comparator.comparingDouble(bottom -> gauge(bottom).used()))
                    .ifPresent(worst -> findings.add(finding(worst, bay, loaded)));
        }
        return findings;
    }

    private static Gauge gauge(DrawerBottom bottom) {
        double stop = Math.max(CLEAR, bottom.room() - CLEAR);
        double note = Math.min(bottom.plate().shorter() / SPAN_SHARE, stop);
        var limit =
                new Limit(Limit.Side.AT_MOST, OptionalDouble.of(note), OptionalDouble.empty(), OptionalDouble.of(stop));
        return new Gauge(Quantity.SAG, bottom.sag(), limit);
    }

    private static Finding finding(DrawerBottom worst, int bay, LoadedStand loaded) {
        var units = loaded.units();
        var plate = worst.plate();
        double sag = worst.sag();
        var words = "Its bottom of " + units.length(plate.thickness()) + " sags " + Quantity.SAG.words(sag, units)
                + " in the course of years under " + units.mass(worst.mass()) + ", "
                + units.length(Math.max(0, worst.room())) + " above what is below it."
                + (worst.isDeep() ? " Past half of its thickness the theory says too much." : "");
        return Finding.judged(TEXT, worst.label(), gauge(worst), words)
                .with(
                        new Input("b", "short side", Quantity.LENGTH, plate.shorter()),
                        new Input("a", "long side", Quantity.LENGTH, plate.longer()),
                        new Input("t", "thickness", Quantity.LENGTH, plate.thickness()),
                        new Input("E", "modulus", Quantity.STRESS, plate.modulus()),
                        new Input("q", "load on its face", Quantity.PRESSURE, worst.pressure()),
                        new Input(
                                "kdef",
                                "creep",
                                Quantity.RATIO,
                                GrainWay.creep(worst.part()).kdef()),
                        new Input("s", "bending stress", Quantity.STRESS, plate.stress(worst.pressure())))
                .remedies(() -> remedies(bay, loaded));
    }

    private static List<Remedy> remedies(int bay, LoadedStand loaded) {
        return List.of(Stiffer.thickerBottoms(loaded.design()), Stiffer.partition(loaded.stand(), bay));
    }
}
