package org.standwright.check;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;

/**
 * Sides of the machine that have to stay in reach, for a crank, a belt cover or a switch, as they lie once it is turned:
 * at all but the front, from where the stand is used anyway, a wall would be in the way. Common practice, no source.
 */
final class SidesInReach implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
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
                : List.of(new Finding(
                        Severity.NOTE,
                        "sides-in-reach",
                        design.machine().name(),
                        "It has to stay in reach from the stand's " + sides
                                + ": do not stand the stand against a wall there.",
                        "common practice, no source"));
    }
}
