package org.standwright.check.balance;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.SupportPolygon;
import org.standwright.check.balance.statics.Threshold;
import org.standwright.check.balance.statics.TippingCase;
import org.standwright.design.Support;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.unit.Units;

/**
 * A stand on casters is pushed over a threshold at its working height: it climbs, or tips over its leading wheels. Who
 * pushes lower, down to the carcass's bottom, is told how low; an anchor holds nothing that rolls.
 */
public final class TipThreshold implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-threshold",
            "Does it tip when it is pushed over a threshold?",
            "ratio = b / (k (H - r)), k = sqrt(2 r h - h^2) / (r - h)",
            "Pushed or pulled slowly at the working height; the push shifts all weight to the leading wheels "
                    + "before it tips. Contents count only where they tip. Swivel casters point the worst way.",
            "statics; the limit is our own choice");

    /** What holds over what tips, to be steady; our own choice. */
    private static final double LEAST = 1.5;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        double height = loaded.design().site().threshold();
        return loaded.design().support() instanceof Support.Casters casters && height > 0
                ? List.of(finding(loaded, new Threshold(height, wheel(casters) / 2)))
                : List.of();
    }

    private static Finding finding(LoadedStand loaded, Threshold threshold) {
        var units = loaded.units();
        var over = "a threshold of " + units.length(threshold.height());
        if (!threshold.isPassable()) {
            return Finding.stop(
                    TEXT,
                    "casters",
                    "Wheels of " + units.length(2 * threshold.wheel()) + " are not pushed over " + over
                            + ": it is as high as their axles. Use larger wheels, or a ramp.");
        }
        var standing = new Standing(loaded);
        double handle = loaded.stand().stack().workingHeight();
        double lowest = loaded.stand().carcass().min().z();
        var rolling = rolling(standing, threshold, handle);
        var worst = rolling.worst();
        double tips = threshold.tips(worst.ratio(), handle);
        double hopeless = (lowest - threshold.wheel()) / (handle - threshold.wheel());
        return Finding.judged(
                        TEXT,
                        "casters",
                        new Gauge(Quantity.RATIO, worst.ratio(), limit(hopeless)),
                        "Pushed slowly over " + over + " at " + units.length(handle) + ", what holds it is "
                                + Quantity.RATIO.words(worst.ratio(), units) + " times what tips it over its "
                                + EdgeSide.word(worst.edge()) + " edge." + lower(worst.ratio(), tips, lowest, units))
                .with(
                        new Input("k", "push over load on the axle", Quantity.RATIO, threshold.pushPerLoad()),
                        new Input("H", "height at which it is pushed", Quantity.LENGTH, handle),
                        new Input("r", "radius of the wheels", Quantity.LENGTH, threshold.wheel()))
                .remedies(
                        () -> new Steadier(standing, rolling, hopeless, Verdict.Lock.OF_NO_USE).against(worst.edge()));
    }

    /** @param hopeless ratio below which even a push at the carcass's bottom tips it */
    private static Limit limit(double hopeless) {
        return new Limit(
                Limit.Side.AT_LEAST,
                OptionalDouble.of(LEAST),
                OptionalDouble.of(Math.min(hopeless, LEAST)),
                OptionalDouble.empty());
    }

    private static String lower(double ratio, double tips, double lowest, Units units) {
        if (ratio >= LEAST) {
            return "";
        }
        return Grid.less(tips, lowest)
                ? " Even a push at the carcass's bottom tips it: lay a ramp."
                : " It tips from " + units.length(tips) + " up: push or pull it well below that, or lay a ramp.";
    }

    /** Rolling to each of the four sides. */
    private static TippingCase rolling(Standing standing, Threshold threshold, double handle) {
        var edges = Stream.of(new Vec2(0, -1), new Vec2(1, 0), new Vec2(0, 1), new Vec2(-1, 0))
                .map(ahead -> Threshold.edge(standing.feet(), ahead))
                .toList();
        return standing.closed()
                .on(new SupportPolygon(edges))
                .weighing((body, edge) -> threshold.of(body, edge, handle));
    }

    private static double wheel(Support.Casters casters) {
        double first = casters.caster().wheel();
        return casters.others().map(others -> Math.min(first, others.wheel())).orElse(first);
    }
}
