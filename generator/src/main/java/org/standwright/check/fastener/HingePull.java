package org.standwright.check.fastener;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/**
 * What draws the top hinge's screws out of their upright: T = W (w/2) / s, a door of weight W and width w on hinges s
 * apart from the highest to the lowest; all screws of that hinge share it.
 */
public final class HingePull implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "hinge-pull",
            "Do the hinges' screws hold the door?",
            "F = W (w/2) / (s n)",
            "The top hinge alone is pulled. A metric screw counts as the thickest numbered one that is not thicker; plywood "
                    + "as wood of specific gravity 0.42. The allowable load is where a caution begins, the Wood Handbook's "
                    + "ultimate load the stop. NDS rates no screw with less than 6 diameters in the wood; its formula is used "
                    + "all the same. Screws in a door's edge are rated nowhere: above 20 N on each, our own choice, they are "
                    + "noted.",
            "withdrawal of NDS 2018 Eq. 12.2-2; Wood Handbook chapter 8, as quoted");

    private static final int PLATE_SCREWS = 2;
    /** Worth a word on a screw in a door's edge, N; our own choice. */
    private static final double IN_AN_EDGE = 20;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        stand.stand().bays().stream()
                .flatMap(bay -> bay.doors().stream())
                .forEach(door -> findings.addAll(found(stand, door)));
        return findings;
    }

    private static List<Finding> found(LoadedStand stand, DoorLayout door) {
        int hinges = door.hinges().size();
        var subject = "door " + door.name();
        if (hinges < 2) {
            return List.of(Finding.stop(TEXT, subject, "One hinge lets it sag: a door takes two or more."));
        }
        double spacing = door.hinges().get(hinges - 1) - door.hinges().get(0);
        if (!Grid.less(0, spacing)) {
            return List.of(Finding.stop(TEXT, subject, "Its hinges sit at one height: it turns about them and sags."));
        }
        double weight = Gravity.newtons(Masses.ofGroup(stand, subject));
        double pull = weight * door.front().width() / 2 / spacing;
        var findings = new ArrayList<Finding>();
        findings.add(inUpright(stand, door, pull)
                .with(
                        new Input("W", "weight of the door", Quantity.FORCE, weight),
                        new Input(
                                "w",
                                "width of the door",
                                Quantity.LENGTH,
                                door.front().width()),
                        new Input("s", "from the lowest hinge to the highest", Quantity.LENGTH, spacing),
                        new Input("n", "screws of a hinge in the upright", Quantity.COUNT, screws(door))));
        if (door.hinge() instanceof Hinge.Butt butt) {
            double force = pull / butt.screws();
            findings.add(Finding.judged(
                    TEXT,
                    subject,
                    new Gauge(Quantity.FORCE, force, Limit.noteAbove(IN_AN_EDGE)),
                    "The top hinge draws with " + stand.units().force(force)
                            + " on each of its screws in the door's edge, where screws are not rated."));
        }
        return findings;
    }

    private static Finding inUpright(LoadedStand stand, DoorLayout door, double pull) {
        var units = stand.units();
        var subject = "door " + door.name();
        double force = pull / screws(door);
        var pulls = "The door draws with " + units.force(force) + " on each screw of its top hinge in the upright";
        var wood = HoldingWood.of(stand.design().carcass().sheet().material());
        var screw = NumberedScrew.largestWithin(family(stand, door).diameter());
        var depth = depth(stand, door);
        if (wood.isEmpty() || screw.isEmpty() || depth.isEmpty()) {
            return Finding.note(TEXT, subject, pulls + ", which is not rated in this wood.");
        }
        double into = depth.getAsDouble();
        double thread = screw.get().threadBeyond(into, 0);
        var limit = ScrewLimits.withdrawal(screw.get(), wood.get(), thread, LoadDuration.PERMANENT);
        var unrated = ScrewLimits.isRated(screw.get(), thread)
                ? ""
                : " Less than " + units.length(screw.get().leastPenetration()) + " of thread is not rated.";
        return Finding.judged(
                TEXT,
                subject,
                new Gauge(Quantity.FORCE, force, limit),
                pulls + ", " + units.length(into) + " deep in its face." + unrated);
    }

    private static int screws(DoorLayout door) {
        return door.hinge() instanceof Hinge.Butt butt ? butt.screws() : PLATE_SCREWS;
    }

    private static Screw family(LoadedStand stand, DoorLayout door) {
        var screws = stand.design().screws();
        return door.hinge() instanceof Hinge.Butt ? screws.panel() : screws.slide();
    }

    private static OptionalDouble depth(LoadedStand stand, DoorLayout door) {
        return Bores.shallowest(
                stand.stand(), door.hinge() instanceof Hinge.Butt ? "hinge pilot" : "hinge plate pilot");
    }
}
