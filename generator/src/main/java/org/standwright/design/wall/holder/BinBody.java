package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** A box whose sides fall from the back, at least as high as the things, to a lower front. */
final class BinBody {
    /** Before and behind the things, mm; common practice, no source. */
    static final double GAP = 10;
    /** Lower is no front, mm; common practice, no source. */
    private static final double LEAST_FRONT = 10;

    private final HolderFrame frame;
    private final Holder.Bin bin;

    BinBody(HolderFrame frame, Holder.Bin bin) {
        this.frame = frame;
        this.bin = bin;
    }

    Body body() {
        var things = bin.things();
        double inner = frame.width(bin.width(), frame.leastWidth() - 2 * frame.board());
        double depth = things.depth() + 2 * GAP;
        double floor = OpenBox.floor(frame);
        double least = Math.max(OpenBox.below(frame), things.height() + floor - frame.top());
        double bottom = frame.bottom(OpenBox.reach(frame, depth), least);
        double rear = frame.top() - bottom;
        check(rear - floor);
        var box = new OpenBox(frame, inner, depth, bottom, rear, bin.front() + floor);
        return of(frame, box);
    }

    /** An open box with the things that stand in it. */
    static Body of(HolderFrame frame, OpenBox box) {
        var things = frame.holder().things();
        double width = OpenBox.width(frame, box.inner());
        double floor = box.bottom() + OpenBox.floor(frame);
        return new Body(
                width,
                box.bottom(),
                box.inBack(),
                box.boards(),
                List.of(),
                new Box3(
                        new Vec3(0, -box.reach(), box.bottom()),
                        new Vec3(width, frame.face(), floor + things.height() + HolderFrame.ABOVE)),
                new Vec3(width / 2, frame.face() - box.depth() / 2, floor + things.height() / 2),
                box.reach(),
                OpenBox.GLUED);
    }

    private void check(double most) {
        if (Grid.less(bin.front(), LEAST_FRONT) || Grid.less(most, bin.front())) {
            var units = frame.design().unit();
            throw frame.refused(
                    "/front",
                    "has a front " + frame.length(bin.front()) + " high, but it must be from "
                            + frame.length(LEAST_FRONT) + " to the height of its back, " + frame.length(most) + ".",
                    Grid.less(most, bin.front())
                            ? "Make it " + frame.length(Exact.onTapeDown(units, most)) + " or less."
                            : "Make it " + Exact.up(units, LEAST_FRONT) + " or more.");
        }
    }
}
