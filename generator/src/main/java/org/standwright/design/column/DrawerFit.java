package org.standwright.design.column;

import java.util.Comparator;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Size3;
import org.standwright.design.kit.Slide;
import org.standwright.design.top.MachineBolts;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Sizes of the drawers in one carcass: from the fronts to the boxes behind them. */
public final class DrawerFit {
    private final Frame frame;
    private final BoxHeights heights;
    private final Slide.Size slide;
    private final MachineBolts bolts;

    DrawerFit(Frame frame) {
        this.frame = frame;
        this.heights = new BoxHeights(frame.design());
        this.slide = longestSlide();
        this.bolts = new MachineBolts(frame);
    }

    /** Front ends of the slides behind the carcass's front edge, mm. */
    public static double slideFront(Frame frame) {
        return frontInCarcass(frame) + frame.design().drawers().slide().setBack();
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

    /** The drawer behind a front, in an opening. */
    DrawerLayout drawer(String name, Rect front, Rect opening) {
        var drawers = frame.design().drawers();
        double cellBottom = Math.max(front.y0(), opening.y0());
        double cell = Math.min(front.y1(), opening.y1()) - cellBottom;
        double taken = bolts.takeFrom(opening.x0(), opening.x1(), cellBottom + cell - BoxHeights.ABOVE);
        var box = new Size3(
                opening.width() - 2 * drawers.slide().sideSpace(), slide.length(), heights.inCell(cell - taken));
        if (taken > 0 && Grid.less(box.height(), heights.leastBox())) {
            throw bolts.tooLow(name, heights.leastBox() - box.height());
        }
        double wall = drawers.box().material().thickness();
        var inside = new Size3(
                box.width() - 2 * wall,
                box.depth() - 2 * wall,
                box.height()
                        - BoxHeights.GROOVE_ABOVE_EDGE
                        - drawers.bottom().material().thickness());
        double lineOnSide = cellBottom + BoxHeights.BELOW + heights.slideLine() - frame.openingBottom();
        return new DrawerLayout(name, front, cell, box, inside, slide, lineOnSide, heights.slideLine());
    }

    /** There is one: {@link PlanFit} has seen to it. */
    private Slide.Size longestSlide() {
        var drawers = frame.design().drawers();
        double usable =
                frame.insideDepth() - slideFront(frame) - drawers.slide().rearSpace();
        return drawers.slide().lengths().stream()
                .filter(size -> !Grid.less(usable, size.length()))
                .max(Comparator.comparingDouble(Slide.Size::length))
                .orElseThrow();
    }
}
