package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Feature;
import org.standwright.part.Pocket;

/**
 * A board with slots that end under the middle of each thing, which goes in from the front. Half of a thing's height is taken
 * to be above the board and half below.
 */
final class SlotsBody {
    /** Between two things, and beyond them at front and rear, mm. */
    private static final double GAP = 10;
    /** The narrowest that a router cuts through a board, mm; common practice, no source. */
    private static final double LEAST_SLOT = 3;
    /** The least depth of a board, mm; common practice, no source. */
    private static final double LEAST_DEPTH = 60;

    private final HolderFrame frame;
    private final Holder.Slots slots;

    SlotsBody(HolderFrame frame, Holder.Slots slots) {
        this.frame = frame;
        this.slots = slots;
    }

    Body body() {
        check();
        var things = slots.things();
        var spans = Spans.of(things.count(), things.width() + GAP, GAP, frame.board(), frame.leastWidth());
        double depth = Math.max(LEAST_DEPTH, things.depth() + 2 * GAP);
        var ledge = new Ledge(frame, spans.width(), depth, spans.posts(), 0);
        double front = frame.face() - depth;
        double middle = front + slotLength();
        return new Body(
                spans.width(),
                ledge.bottom(),
                ledge.inBack(),
                ledge.boards("slotted board", cuts(spans)),
                List.of(),
                new Box3(
                        new Vec3(0, Math.min(front, middle - things.depth() / 2), -things.height() / 2),
                        new Vec3(spans.width(), frame.face(), things.height() / 2 + HolderFrame.ABOVE)),
                new Vec3(mean(spans.centres()), middle, 0),
                ledge.reach(),
                Ledge.GLUED);
    }

    private double slotLength() {
        return slots.things().depth() / 2 + GAP;
    }

    private List<Feature> cuts(Spans spans) {
        double length = slotLength();
        double radius = Math.min(slots.slot(), length) / 2;
        return spans.centres().stream()
                .<Feature>map(x -> Pocket.through(
                        new Rect(x - slots.slot() / 2, 0, x + slots.slot() / 2, length), radius, "open slot"))
                .toList();
    }

    private void check() {
        if (Grid.less(slots.slot(), LEAST_SLOT)) {
            throw frame.refused(
                    "/slot",
                    "has slots " + frame.length(slots.slot()) + " wide, too narrow to be cut right through a board.",
                    "Make them " + Exact.up(frame.design().unit(), LEAST_SLOT) + " wide or more.");
        }
        double thing = slots.things().width();
        if (!Grid.less(slots.slot(), thing)) {
            throw frame.refused(
                    "/slot",
                    "has slots " + frame.length(slots.slot()) + " wide; its things, " + frame.length(thing)
                            + " wide, fall through.",
                    "Make the slots "
                            + frame.length(Exact.onTapeDown(frame.design().unit(), Math.max(LEAST_SLOT, 0.9 * thing)))
                            + " wide, or give the width of what rests on them.");
        }
    }

    static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum() / values.size();
    }
}
