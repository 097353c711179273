package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/**
 * A board with a row of bored holes. Half of a thing's height is taken to be below the board; it is drawn out upwards, so the
 * room above is that of all its height.
 */
final class BoresBody {
    /** Between two things or holes, and beyond the things at front and rear, mm. */
    private static final double GAP = 10;
    /** Wood left before and behind a hole, mm; common practice, no source. */
    private static final double LEAST_WOOD = 8;
    /** The thinnest bore, mm; common practice, no source. */
    private static final double LEAST_BORE = 2;
    /** The least depth of a board, mm; common practice, no source. */
    private static final double LEAST_DEPTH = 60;

    private final HolderFrame frame;
    private final Holder.Bores bores;

    BoresBody(HolderFrame frame, Holder.Bores bores) {
        this.frame = frame;
        this.bores = bores;
    }

    Body body() {
        check();
        var things = bores.things();
        double pitch = Math.max(things.width(), bores.bore()) + GAP;
        var spans = Spans.of(things.count(), pitch, GAP, frame.board(), frame.leastWidth());
        double depth = Math.max(LEAST_DEPTH, things.depth() + 2 * GAP);
        var ledge = new Ledge(frame, spans.width(), depth, spans.posts(), 0);
        double middle = frame.face() - things.depth() / 2 - GAP;
        double y = depth - things.depth() / 2 - GAP;
        var holes = spans.centres().stream()
                .<Feature>map(x -> Hole.through(x, y, bores.bore(), "bore for a thing"))
                .toList();
        return new Body(
                spans.width(),
                ledge.bottom(),
                ledge.inBack(),
                ledge.boards("bored board", holes),
                List.of(),
                new Box3(
                        new Vec3(0, frame.face() - depth, -things.height() / 2),
                        new Vec3(spans.width(), frame.face(), things.height() + HolderFrame.ABOVE)),
                new Vec3(SlotsBody.mean(spans.centres()), middle, 0),
                ledge.reach(),
                Ledge.GLUED);
    }

    private void check() {
        if (Grid.less(bores.bore(), LEAST_BORE)) {
            throw frame.refused(
                    "/bore",
                    "has holes of " + frame.length(bores.bore()) + ", too thin to be bored right through a board.",
                    "Bore " + Exact.up(frame.design().unit(), LEAST_BORE) + " or more.");
        }
        var things = bores.things();
        double most = things.depth() + 2 * (GAP - LEAST_WOOD);
        double through = Math.max(things.width(), things.depth());
        if (!Grid.less(bores.bore(), through) || Grid.less(most, bores.bore())) {
            throw frame.refused(
                    "/bore",
                    "has holes of " + frame.length(bores.bore()) + "; its things, " + frame.length(things.width())
                            + " wide and " + frame.length(things.depth())
                            + " deep, fall through, or the wood beside the holes is too thin.",
                    "Bore "
                            + frame.length(
                                    Exact.onTapeDown(frame.design().unit(), Math.min(most, 0.9 * things.width())))
                            + " or less, or give the size of the things' heads.");
        }
    }
}
