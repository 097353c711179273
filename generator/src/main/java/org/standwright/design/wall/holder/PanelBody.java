package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** A plain board; what its maker screws to it stays within its outline. */
final class PanelBody {
    private final HolderFrame frame;
    private final Holder.Panel panel;

    PanelBody(HolderFrame frame, Holder.Panel panel) {
        this.frame = frame;
        this.panel = panel;
    }

    Body body() {
        check();
        double bottom = frame.top() - panel.height();
        double depth = panel.things().depth();
        return new Body(
                panel.width(),
                bottom,
                List.of(),
                List.of(),
                List.of(),
                new Box3(new Vec3(0, frame.face() - depth, bottom), new Vec3(panel.width(), frame.face(), frame.top())),
                new Vec3(panel.width() / 2, frame.face() - depth / 2, bottom + panel.height() / 2),
                -frame.face(),
                "hanger on its back");
    }

    private void check() {
        var units = frame.design().unit();
        var section = frame.section();
        double least = frame.top() + section.height();
        if (Grid.less(panel.height(), least)) {
            throw frame.refused(
                    "/height",
                    "is " + frame.length(panel.height()) + " high, but must cover its hanger and the strip below it, "
                            + frame.length(least) + ".",
                    "Make it " + Exact.up(units, least) + " high or more.");
        }
        if (Grid.less(panel.width(), frame.leastWidth())) {
            throw frame.refused(
                    "/width",
                    "is " + frame.length(panel.width()) + " wide; to hang straight it takes "
                            + frame.length(frame.leastWidth()) + ".",
                    "Make it " + Exact.up(units, frame.leastWidth()) + " wide or more.");
        }
        var things = panel.things();
        double across = StrictMath.floor(panel.width() / things.width() + Grid.STEP);
        double up = StrictMath.floor(panel.height() / things.height() + Grid.STEP);
        if (across * up < things.count()) {
            throw frame.refused(
                    "/things",
                    "is " + frame.length(panel.width()) + " x " + frame.length(panel.height()) + ", on which "
                            + Math.round(across * up) + " things of " + frame.length(things.width()) + " x "
                            + frame.length(things.height()) + " have room, not " + things.count() + ".",
                    "Make the panel larger, or screw fewer things to it.");
        }
    }
}
