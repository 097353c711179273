package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** All drawers and doors open, or of the drawers of a bay only the worst where a lock lets no more open. */
public final class TipOpen implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-open",
            "Does it tip with all drawers open?",
            "ratio = R / O",
            "Contents count only where they tip. Swivel casters point the worst way. Doors stand open at 90 degrees.",
            "statics; the limits are our own choice");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        if (standing.openings().isEmpty()) {
            return List.of();
        }
        return List.of(new Verdict(TEXT, "whole stand", situation(standing), standing, standing.allOpen())
                .helpedByALock()
                .within(Verdict.IN_USE));
    }

    private static String situation(Standing standing) {
        boolean drawers = standing.openings().stream().anyMatch(Opening::drawer);
        boolean doors = standing.openings().stream().anyMatch(opening -> !opening.drawer());
        if (!drawers) {
            return "With all doors open";
        }
        return (standing.isInterlocked() ? "With one drawer of each bay" : "With all drawers")
                + (doors ? " and all doors open" : " open");
    }
}
