package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;

/**
 * Drawers open to the front of the stand: noted when the operator works at another side, and when boards pass over them.
 * How far one comes out is its slide's travel, mm. Common practice, no source.
 */
final class DrawerInTheWay implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var bays = stand.bays().stream().filter(bay -> !bay.drawers().isEmpty()).toList();
        var findings = new ArrayList<Finding>();
        if (bays.isEmpty()) {
            return findings;
        }
        var facing = Facing.of(stand);
        var comeOut = bays.stream().map(bay -> comeOut(bay, stand)).collect(Collectors.joining(", "));
        if (facing.operator() != Side.FRONT) {
            findings.add(note("The operator works at the stand's " + Facing.word(facing.operator())
                    + ", but the drawers open to its front (" + comeOut
                    + "). Keep that much free in front of it, or turn the machine."));
        }
        facing.infeed().filter(side -> side == Side.FRONT || side == Side.BACK).ifPresent(infeed -> {
            var pass = infeed == Side.FRONT ? "go in" : "come out";
            findings.add(note("Boards " + pass + " at the front, over the drawers: an open one lies in the feed path ("
                    + comeOut + "). Shut them before you feed."));
        });
        return findings;
    }

    private static String comeOut(BayLayout bay, Stand stand) {
        double travel =
                bay.drawers().stream().mapToDouble(DrawerLayout::travel).max().orElseThrow();
        return "bay " + bay.name() + " by " + stand.design().unit().length(travel);
    }

    private static Finding note(String message) {
        return new Finding(Severity.NOTE, "drawer-in-the-way", "drawers", message, "common practice, no source");
    }
}
