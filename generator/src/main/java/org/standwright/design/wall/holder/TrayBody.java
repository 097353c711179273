package org.standwright.design.wall.holder;

import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Grid;

/** A bottom at the lower edge of the back, with a rim of one height at both sides and before it. */
final class TrayBody {
    /** Lower is no rim, mm; common practice, no source. */
    private static final double LEAST_RIM = 10;

    private final HolderFrame frame;
    private final Holder.Tray tray;

    TrayBody(HolderFrame frame, Holder.Tray tray) {
        this.frame = frame;
        this.tray = tray;
    }

    Body body() {
        if (Grid.less(tray.rim(), LEAST_RIM)) {
            throw frame.refused(
                    "/rim",
                    "has a rim " + frame.length(tray.rim()) + " high, which keeps nothing in.",
                    "Make it " + Exact.up(frame.design().unit(), LEAST_RIM) + " or more.");
        }
        double inner = frame.width(tray.width(), frame.leastWidth() - 2 * frame.board());
        double depth = tray.things().depth() + 2 * BinBody.GAP;
        double rim = tray.rim() + OpenBox.floor(frame);
        double least = Math.max(OpenBox.below(frame), rim - frame.top());
        double bottom = frame.bottom(OpenBox.reach(frame, depth), least);
        return BinBody.of(frame, new OpenBox(frame, inner, depth, bottom, rim, rim));
    }
}
