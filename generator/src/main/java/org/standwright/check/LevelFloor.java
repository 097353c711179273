package org.standwright.check;

import java.util.List;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.built.Stand;

/** A stack without an adjustable term meets its height only on a level floor. Common practice, no source. */
final class LevelFloor implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var stack = stand.stack();
        var units = stand.design().unit();
        boolean adjustable = stack.terms().stream().anyMatch(Term::isAdjustable);
        var message = adjustable
                ? "The working height can be set from " + units.length(stack.lowest()) + " to "
                        + units.length(stack.highest()) + "."
                : "Nothing in the height stack can be adjusted: on a floor that falls, shim under the machine, or use "
                        + "levelers, where it has to be level with its neighbours.";
        return List.of(
                new Finding(Severity.NOTE, "level-floor", "height stack", message, "common practice, no source"));
    }
}
