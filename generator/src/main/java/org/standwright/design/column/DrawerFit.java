package org.standwright.design.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Size3;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Sizes of the drawers in one carcass: from the fronts to the boxes behind them. */
public final class DrawerFit {
    private final Frame frame;
    private final BoxHeights heights;
    private final Slide.Size slide;

    public DrawerFit(Frame frame) {
        this.frame = frame;
        this.heights = new BoxHeights(frame.design());
        this.slide = longestSlide();
    }

    public BayLayout bay(int bay) {
        var opening = frame.opening(bay);
        var zone = zone(bay);
        double gap = frame.design().drawers().gap();
        double top = zone.y1() - gap;
        var drawers = new ArrayList<DrawerLayout>();
        for (double height : new FrontColumn(frame.design(), bay).heights(zone.height())) {
            var front = new Rect(zone.x0() + sideGap(), top - height, zone.x1() - sideGap(), top);
            drawers.add(drawer((bay + 1) + "." + (drawers.size() + 1), front, opening));
            top -= height + gap;
        }
        return new BayLayout(String.valueOf(bay + 1), opening, List.of(new SectionLayout.Drawers(opening, drawers)));
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

    /** The area that a bay's fronts share: the opening when inset, else up to the middle of the panels around it. */
    private Rect zone(int bay) {
        var opening = frame.opening(bay);
        if (frame.isInset()) {
            return opening;
        }
        double panel = frame.panel();
        boolean first = bay == 0;
        boolean last = bay == frame.openings().size() - 1;
        return new Rect(
                opening.x0() - (first ? panel : panel / 2),
                frame.floorToCarcass(),
                opening.x1() + (last ? panel : panel / 2),
                frame.top());
    }

    /** Overlay fronts share the gap with their neighbour; inset fronts leave all of it to the panel. */
    private double sideGap() {
        double gap = frame.design().drawers().gap();
        return frame.isInset() ? gap : gap / 2;
    }

    private DrawerLayout drawer(String name, Rect front, Rect opening) {
        var drawers = frame.design().drawers();
        double cellBottom = Math.max(front.y0(), opening.y0());
        double cell = Math.min(front.y1(), opening.y1()) - cellBottom;
        var box = new Size3(opening.width() - 2 * drawers.slide().sideSpace(), slide.length(), heights.inCell(cell));
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
