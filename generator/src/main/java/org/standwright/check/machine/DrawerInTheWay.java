package org.standwright.check.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;

/**
 * Drawers open to the front of the stand: noted when the operator works at another side, and when boards pass over them.
 * How far one comes out is its slide's travel, mm. Common practice, no source.
 */
public final class DrawerInTheWay implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("drawer-in-the-way", "Is an open drawer in the way?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
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
        return Finding.note(TEXT, "drawers", message);
    }
}
