package org.standwright.check.balance;

import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.TipAngle;

/**
 * How far the stand leans, everything closed, before it falls over one of its edges, 0 or less where it falls by
 * itself; 10 degrees are our own choice.
 */
public final class TipClosed implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-closed",
            "How far can it lean before it falls?",
            "angle = atan(b / h)",
            "Contents count only where they tip. Swivel casters point the worst way. The machine "
                    + "counts with its head or table at its highest.",
            "statics; the limit is our own choice");
    /** Degrees. */
    private static final double LEAST = 10;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        var leaning = standing.closed().weighing(TipAngle::share);
        var worst = leaning.worst();
        double angle = TipAngle.degrees(worst.moments());
        var finding = Finding.judged(
                        TEXT,
                        "whole stand",
                        new Gauge(Quantity.ANGLE, angle, Limit.atLeast(LEAST, 0)),
                        "With everything closed it falls over its " + EdgeSide.word(worst.edge()) + " edge "
                                + when(angle))
                .with(new Input(
                        "b / h", "way to the edge over height, of the centre of mass", Quantity.RATIO, worst.ratio()));
        return List.of(finding.remedies(() -> new Steadier(
                        standing, leaning, StrictMath.tan(StrictMath.toRadians(LEAST)), Verdict.Lock.OF_NO_USE)
                .against(worst.edge())));
    }

    private static String when(double angle) {
        return angle > 0 ? "once it leans by " + String.format(Locale.ROOT, "%.1f", angle) + "\u00b0." : "by itself.";
    }
}
