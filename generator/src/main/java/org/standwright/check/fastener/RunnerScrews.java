package org.standwright.check.fastener;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Hang;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.kit.Bar;
import org.standwright.unit.Gravity;

/**
 * Wooden runners: the front screw of each, pushed down by the fullest drawer pulled out as far as it goes.
 *
 * <p>Out by s, a box of length L whose middle lies before the runner's front end tips over that end and is held down at
 * its rear: R = W (1 + (s - L/2) / (L - s)), half of it on each runner. The screws share R/2 as a {@link ScrewRow} does, x from the
 * front end (own derivation).
 */
public final class RunnerScrews implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "runner-screws",
            "Do the screws of the wooden runners carry the fullest drawer?",
            "F = R/2 (1/n + xm (xm - x1) / sum (x - xm)^2), R = W (1 + (s - L/2) / (L - s))",
            "The drawer hangs on the front ends of its runners when it is out as far as it may travel. A metric screw counts "
                    + "as the thickest numbered one that is not thicker; plywood and bars as wood of specific gravity 0.42. "
                    + "The allowable load is where a caution begins, the yield load the stop. NDS rates no screw with less "
                    + "than 6 diameters in the wood; its formulas are used all the same.",
            "yield modes of NDS 2018 12.3.1, as quoted; own derivation of the force");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        if (!(stand.design().drawers().hang() instanceof Hang.Runners runners)) {
            return List.of();
        }
        return stand.stand().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .max(Comparator.comparingDouble(drawer -> onEachRunner(stand, drawer)))
                .map(drawer -> found(stand, drawer, runners.bar()))
                .stream()
                .toList();
    }

    private static Finding found(LoadedStand stand, DrawerLayout drawer, Bar bar) {
        double onRunner = onEachRunner(stand, drawer);
        var places = places(stand, drawer);
        var carries =
                "Open as far as it goes, it puts " + stand.units().force(onRunner) + " on the front end of each runner";
        if (places.size() < 2) {
            return Finding.stop(
                    TEXT, subject(drawer), carries + ", which takes two screws: it has " + places.size() + ".");
        }
        return held(stand, drawer, bar, onRunner * worst(places), carries)
                .with(
                        new Input("R/2", "on the front end of one runner", Quantity.FORCE, onRunner),
                        new Input("s", "travel", Quantity.LENGTH, drawer.travel()),
                        new Input(
                                "L",
                                "length of the box",
                                Quantity.LENGTH,
                                drawer.box().depth()),
                        new Input("n", "screws in a runner", Quantity.COUNT, places.size()),
                        new Input("x1", "first screw from the front end", Quantity.LENGTH, places.get(0)))
                .remedies(List.of(Remedy.ofStand("one drawer more in each column", new DrawerCount(1)::in)));
    }

    private static Finding held(LoadedStand stand, DrawerLayout drawer, Bar bar, double force, String carries) {
        var units = stand.units();
        var screw = NumberedScrew.largestWithin(stand.design().screws().panel().diameter());
        var upright = HoldingWood.of(stand.design().carcass().sheet().material());
        var runner = HoldingWood.of(bar.material());
        var depth = Bores.shallowest(stand.stand(), "runner pilot");
        if (screw.isEmpty() || upright.isEmpty() || runner.isEmpty() || depth.isEmpty()) {
            return Finding.note(TEXT, subject(drawer), carries + ". Its screws in this wood are not rated.");
        }
        double into = depth.getAsDouble();
        var reaches = carries + ", " + units.force(force) + " on its front screw, which reaches " + units.length(into)
                + " into the upright.";
        if (into <= screw.get().tip()) {
            return Finding.stop(TEXT, subject(drawer), reaches + " That is little more than its tip.");
        }
        var joint = SingleShear.along(
                screw.get(),
                into,
                bar.width(),
                upright.get().value(),
                runner.get().value());
        var limit = ScrewLimits.lateral(joint, LoadDuration.PERMANENT);
        var unrated = ScrewLimits.isRated(screw.get(), into)
                ? ""
                : " Less than " + units.length(screw.get().leastPenetration()) + " is not rated.";
        return Finding.judged(TEXT, subject(drawer), new Gauge(Quantity.FORCE, force, limit), reaches + unrated);
    }

    private static String subject(DrawerLayout drawer) {
        return "drawer " + drawer.name();
    }

    private static double onEachRunner(LoadedStand stand, DrawerLayout drawer) {
        double weight = Gravity.newtons(Masses.ofGroup(stand, subject(drawer)));
        double length = drawer.box().depth();
        double before = drawer.travel() - length / 2;
        return weight / 2 * (before <= 0 ? 1 : 1 + before / (length - drawer.travel()));
    }

    /** Places of the screws of the runner whose front screw carries more, left or right. */
    private static List<Double> places(LoadedStand stand, DrawerLayout drawer) {
        return Stream.of("left", "right")
                .map(side -> Bores.along(stand.stand(), subject(drawer) + " " + side + " runner", "runner screw"))
                .max(Comparator.comparingDouble(RunnerScrews::worst))
                .orElseThrow();
    }

    /** What the most loaded screw carries of a load on the runner's front end. */
    private static double worst(List<Double> places) {
        return new ScrewRow(places).worst(0);
    }
}
