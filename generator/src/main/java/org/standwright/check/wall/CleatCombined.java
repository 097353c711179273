package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.fastener.CombinedLoad;

/** The worst screw of each strip, drawn out and bent at once. */
public final class CleatCombined implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-combined",
            "Do the screws hold pull and weight at once?",
            "used = R (W'p cos^2 A + Z' sin^2 A) / (W'p Z'), R of Fw and Fv, A its angle from the wall",
            RatedStrip.ASSUMED,
            RatedStrip.STATICS + "NDS 2018 12.4, as quoted");

    @Override
    public RuleText text() {
        return TEXT;
    }

    /** Screws that hold nothing at all are {@link CleatWithdrawal}'s. */
    @Override
    public List<Finding> check(HungWall wall) {
        return RatedStrip.of(wall).stream()
                .filter(RatedStrip::isCombined)
                .map(strip -> found(wall, strip))
                .toList();
    }

    private static Finding found(HungWall wall, RatedStrip strip) {
        var units = wall.units();
        var screw = strip.screw();
        var worst = strip.worst(load -> screw.use(load).combined());
        double used = screw.use(worst.load()).combined();
        double linear = new CombinedLoad(screw.lateral(), screw.withdrawal())
                .linear(worst.load().sideways(), worst.load().out());
        var message = strip.where(worst, units) + "a screw is drawn out with "
                + units.force(worst.load().out()) + " and carries "
                + units.force(worst.load().sideways()) + " across: " + Quantity.RATIO.words(used, units)
                + " of what it may.";
        return strip.judged(TEXT, worst, new Gauge(Quantity.RATIO, used, RatedStrip.limit(1)), message, units)
                .with(
                        new Input("W'p", "what it may be drawn with", Quantity.FORCE, screw.withdrawal()),
                        new Input("Z'", "what it may carry across", Quantity.FORCE, screw.lateral()),
                        new Input("Fw/W'p + Fv/Z'", "the simple sum, never below", Quantity.RATIO, linear))
                .remedies(() -> new Stronger(wall).strip(strip.load()));
    }
}
