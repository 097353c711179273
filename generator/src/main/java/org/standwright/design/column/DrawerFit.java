package org.standwright.design.column;

import org.standwright.design.built.DrawerLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Size3;
import org.standwright.design.top.MachineBolts;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Sizes of the drawers in one carcass: from the fronts to the boxes behind them. */
public final class DrawerFit {
    private final Frame frame;
    private final BoxHeights heights;
    private final Running running;
    private final double room;
    private final MachineBolts bolts;

    DrawerFit(Frame frame) {
        this.frame = frame;
        this.heights = new BoxHeights(frame.design());
        this.running = Running.of(frame.design());
        this.room = room(frame);
        this.bolts = new MachineBolts(frame);
    }

    /** Front ends of slides or runners behind the carcass's front edge, mm. */
    public static double slideFront(Frame frame) {
        return frontInCarcass(frame) + Running.of(frame.design()).setBack();
    }

    /** Front face of the drawer boxes, y in the assembly: behind an inset front, before the edge by the bumpers. */
    public static double boxFront(Frame frame) {
        return frame.isInset()
                ? frontInCarcass(frame)
                : -frame.design().drawers().bumper();
    }

    private static double frontInCarcass(Frame frame) {
        return frame.isInset() ? frame.design().drawers().front().material().thickness() : 0;
    }

    /**
     * The drawer behind a front, in an opening.
     *
     * @param field JSON pointer of the contents that it belongs to
     */
    DrawerLayout drawer(String field, String name, Rect front, Rect opening) {
        var drawers = frame.design().drawers();
        boolean top = !Grid.less(front.y1(), opening.y1() - drawers.gap());
        double cellBottom = Math.max(front.y0(), opening.y0());
        double cell = Math.min(front.y1(), opening.y1()) - cellBottom;
        double taken = bolts.takeFrom(opening.x0(), opening.x1(), cellBottom + cell - running.free(top));
        var box = new Size3(
                opening.width() - 2 * running.sideSpace(), running.boxDepth(room), heights.inCell(cell - taken, top));
        if (taken > 0 && Grid.less(box.height(), running.leastBox())) {
            throw bolts.tooLow(field, name, front.height(), running.leastBox() - box.height());
        }
        double wall = drawers.box().material().thickness();
        var inside = new Size3(
                box.width() - 2 * wall,
                box.depth() - 2 * wall,
                box.height()
                        - BoxHeights.GROOVE_ABOVE_EDGE
                        - drawers.bottom().material().thickness());
        var line = running.slideLine();
        var lineOnSide = line.stream()
                .map(onBox -> cellBottom + running.below() + onBox - frame.openingBottom())
                .findFirst();
        return new DrawerLayout(name, front, cell, box, inside, running.slide(room), lineOnSide, line);
    }

    /** Depth from the back of an inset front, or from the carcass's front edge, to the inside of the back, mm. */
    private static double room(Frame frame) {
        return frame.insideDepth() - frontInCarcass(frame);
    }
}
