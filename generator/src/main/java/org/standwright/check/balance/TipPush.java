package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** A level push at the working height, in the direction that tips soonest. */
public final class TipPush implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-push",
            "Does it tip when somebody pushes it?",
            "ratio = R / O, with O including F H",
            "Contents count only where they tip. Swivel casters point the worst way. It does not "
                    + "slide. Drawers and doors are closed.",
            "statics; force and limits are our own choice");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        double push = loaded.design().loads().push();
        double height = loaded.stand().stack().workingHeight();
        var pushed = standing.closed().with(edge -> List.of(edge.push(push, height)));
        return List.of(new Verdict(
                        TEXT,
                        "whole stand",
                        "Pushed with " + loaded.units().force(push) + " at "
                                + loaded.units().length(height),
                        standing,
                        pushed)
                .within(Verdict.IN_USE));
    }
}
