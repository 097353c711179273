package org.standwright.check.balance;

import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** The floor falls, in the direction that tips soonest. */
public final class TipSlope implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-slope",
            "Does it tip on a floor that falls?",
            "ratio = R / O = b / (h tan(slope))",
            "Contents count only where they tip. Swivel casters point the worst way. Drawers and doors are closed.",
            "statics; the limits are our own choice");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        double slope = loaded.design().site().slope();
        var sloping = standing.closed().weighing((body, edge) -> edge.of(body, slope));
        return List.of(new Verdict(
                        TEXT,
                        "whole stand",
                        "On a floor that falls by " + String.format(Locale.ROOT, "%.1f", slope) + "\u00b0",
                        standing,
                        sloping)
                .within(Verdict.IN_USE));
    }
}
