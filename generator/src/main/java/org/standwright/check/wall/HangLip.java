package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** A hand that leans on the front of a holder: whether it rides out, and whether its strip holds. */
public final class HangLip implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hang-lip",
            "Does it bear a hand on its front?",
            "used = the larger of (e' - t/2) / d over its limit and of what the worst screw of its strips uses, with F at f"
                    + " added to W",
            "A hand presses with 100 N as far out as it reaches; for good, though a hand does not stay.",
            "the load and the limits, a caution above 1 and a stop above 1.5: our own choice; the rest as hang-ride-out and"
                    + " cleat-combined");

    /** N. */
    private static final double HAND = 100;

    static final double STOP = 1.5;

    private static final Limit LIMIT = Limit.atMost(1, STOP);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        var bodies = HungBody.all(wall);
        return bodies.stream().map(body -> found(wall, bodies, body)).toList();
    }

    private static Finding found(HungWall wall, List<HungBody> bodies, HungBody body) {
        double force = HAND;
        double front = body.load().holder().made().lip();
        var pressed = pressed(body);
        var riding = new RideOut(wall, pressed);
        double rides = riding.ratio() / riding.limit();
        double screws = screws(wall, bodies, body, pressed);
        var units = wall.units();
        var message = "Pressed with " + units.force(force) + " at " + units.length(front)
                + " in front of the wall, it uses "
                + Quantity.RATIO.words(rides, units) + " of what keeps it from riding out"
                + (screws > 0 ? " and " + Quantity.RATIO.words(screws, units) + " of its strip's screws" : "") + ".";
        return Finding.judged(TEXT, body.name(), new Gauge(Quantity.RATIO, Math.max(rides, screws), LIMIT), message)
                .with(
                        new Input("F", "a hand's load", Quantity.FORCE, force),
                        new Input("f", "in front of the wall", Quantity.LENGTH, front))
                .with(new RideOut(wall, body).inputs())
                .remedies(() -> remedies(wall, body, rides > 1, screws > 1));
    }

    /** With a hand on its front. */
    static HungBody pressed(HungBody body) {
        return body.pressed(HAND, body.load().holder().made().lip());
    }

    /** Of the strips that carry it; 0 where no source rates them, or where they hold nothing anyway. */
    private static double screws(HungWall wall, List<HungBody> bodies, HungBody body, HungBody pressed) {
        var place = body.load().holder();
        var all = bodies.stream()
                .filter(other -> other.load().holder().wall() == place.wall()
                        && other.load().holder().row() == place.row())
                .map(other -> other.equals(body) ? pressed : other)
                .toList();
        return RatedStrip.of(wall, all).stream()
                .filter(strip -> strip.load().held().stream()
                        .anyMatch(piece -> piece.body().equals(pressed)))
                .mapToDouble(strip -> strip.use().most())
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }

    private static List<Remedy> remedies(HungWall wall, HungBody body, boolean rides, boolean draws) {
        var stronger = new Stronger(wall);
        var remedies = new ArrayList<Remedy>();
        if (rides) {
            remedies.add(stronger.locked(body.name()));
        }
        if (draws) {
            remedies.add(stronger.second());
            remedies.addAll(stronger.longer());
        }
        stronger.elsewhere(body.load()).ifPresent(remedies::add);
        return remedies;
    }
}
