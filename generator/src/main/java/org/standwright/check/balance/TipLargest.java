package org.standwright.check.balance;

import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** One open drawer, the one that tips most. */
public final class TipLargest implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-largest",
            "Does it tip when one drawer is opened?",
            "ratio = R / O",
            "Contents count only where they tip. Swivel casters point the worst way.",
            "statics; the limits are our own choice");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        return standing.openings().stream()
                .filter(Opening::drawer)
                .min(Comparator.comparingDouble(
                        drawer -> standing.open(drawer).worst().ratio()))
                .map(drawer -> new Verdict(
                                TEXT,
                                drawer.group(),
                                "With " + drawer.group() + " open",
                                standing,
                                standing.open(drawer))
                        .within(Verdict.IN_USE))
                .stream()
                .toList();
    }
}
