package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.HeightStack.Term;

/** A stack without an adjustable term meets its height only on a level floor. Common practice, no source. */
public final class LevelFloor implements Rule {
    private static final RuleText TEXT =
            RuleText.plain("level-floor", "Can it be levelled?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var stack = stand.stack();
        var units = stand.design().unit();
        boolean adjustable = stack.terms().stream().anyMatch(Term::isAdjustable);
        var message = adjustable
                ? "The working height can be set from " + units.length(stack.lowest()) + " to "
                        + units.length(stack.highest()) + "."
                : "Nothing in the height stack can be adjusted: on a floor that falls, shim under the machine, or use "
                        + "levelers, where it has to be level with its neighbours.";
        return List.of(Finding.note(TEXT, "height stack", message));
    }
}
