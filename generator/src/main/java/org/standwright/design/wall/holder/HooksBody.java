package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Grid;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/** A back with a pilot hole for each bought hook. */
final class HooksBody {
    /** Wood left behind a pilot hole, mm. */
    private static final double BEHIND = 4;

    private final HolderFrame frame;
    private final Holder.Hooks hooks;

    HooksBody(HolderFrame frame, Holder.Hooks hooks) {
        this.frame = frame;
        this.hooks = hooks;
    }

    Body body() {
        var things = hooks.things();
        if (Grid.less(hooks.reach(), things.depth() / 2)) {
            throw frame.refused(
                    "/reach",
                    "has hooks that hold the middle of a thing " + frame.length(hooks.reach())
                            + " before the board, but a thing " + frame.length(things.depth())
                            + " deep needs half of that.",
                    "Use hooks that reach " + Exact.up(frame.design().unit(), things.depth() / 2) + " or more.");
        }
        var hung = new HangingRow(frame, things.width() + HolderFrame.BESIDE, HolderFrame.BESIDE / 2);
        double reach = hooks.reach() - frame.face();
        double bottom = frame.bottom(reach, 0);
        double pilot = frame.screwing().family().pilot();
        var holes = hung.centres().stream()
                .<Feature>map(x -> Hole.blind(
                        Face.SHOW, x, hung.level() - bottom, pilot, frame.board() - BEHIND, "pilot for a hook"))
                .toList();
        var bought = new Hardware(hooks.hook(), holes.size(), hooks.name() + ", one for each thing");
        return hung.body(holes, List.of(bought), bottom, hung.level(), reach, reach);
    }
}
