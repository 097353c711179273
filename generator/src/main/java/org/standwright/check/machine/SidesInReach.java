package org.standwright.check.machine;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.kit.Side;

/**
 * Sides of the machine that have to stay in reach, for a crank, a belt cover or a switch, as they lie once it is turned:
 * at all but the front, from where the stand is used anyway, a wall would be in the way. Common practice, no source.
 */
public final class SidesInReach implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("sides-in-reach", "Which sides have to stay in reach?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var design = stand.design();
        var sides = design.machine().reachable().stream()
                .map(side -> side.turned(design.place().turn()))
                .filter(side -> side != Side.FRONT)
                .distinct()
                .sorted()
                .map(Facing::word)
                .collect(Collectors.joining(" and "));
        return sides.isEmpty()
                ? List.of()
                : List.of(Finding.note(
                        TEXT,
                        design.machine().name(),
                        "It has to stay in reach from the stand's " + sides
                                + ": do not stand the stand against a wall there."));
    }
}
