package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** Whether a holder rides up its bevel and off, because it stands out far and leans on the wall close below. */
public final class HangRideOut implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hang-ride-out",
            "Does a holder ride up and out?",
            "(e - t/2) / d at most tan(tilt + atan mu); locked by two screws that carry Z' each, (1 + 2 Z' / W) times that",
            "Friction 0.3; none where the lower back leans.",
            "own derivation; friction 0.3 and the caution above 0.8 of the limit: our own choice");

    private static final double CAUTION = 0.8;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return HungBody.all(wall).stream().map(body -> found(wall, body)).toList();
    }

    private static Finding found(HungWall wall, HungBody body) {
        var riding = new RideOut(wall, body);
        var units = wall.units();
        return Finding.judged(
                        TEXT,
                        body.name(),
                        new Gauge(
                                Quantity.RATIO, riding.ratio(), Limit.atMost(CAUTION * riding.limit(), riding.limit())),
                        "Its centre of mass is " + units.length(body.hanging().centre())
                                + " in front of the wall, and its back leans on it "
                                + units.length(body.hanging().drop()) + " below the bevel: a ratio of "
                                + Quantity.RATIO.words(riding.ratio(), units) + ".")
                .with(riding.inputs())
                .remedies(riding::remedies);
    }
}
