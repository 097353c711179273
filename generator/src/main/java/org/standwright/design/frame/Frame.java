package org.standwright.design.frame;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.Joint;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/**
 * The numbers that all parts of a carcass share, mm.
 *
 * @param plan outline of the carcass
 * @param floorToCarcass height of the carcass's underside
 * @param height of the carcass, undersides to top of the sub-top
 * @param openings width of each bay's opening, left to right
 * @param floors openings that stand on the bottom, seen from the front, once they are known: those of the bays, or of
 *     the bays within them
 */
public record Frame(
        StandDesign design,
        Size2 plan,
        double floorToCarcass,
        double height,
        List<Double> openings,
        List<Rect> floors) {
    public Frame {
        openings = List.copyOf(openings);
        floors = List.copyOf(floors);
    }

    /** Before anything is known of what is in the bays. */
    public Frame(StandDesign design, Size2 plan, double floorToCarcass, double height, List<Double> openings) {
        this(design, plan, floorToCarcass, height, openings, List.of());
    }

    /** The same, with these bays built in. */
    public Frame around(List<BayLayout> bays) {
        var onBottom = bays.stream()
                .flatMap(bay -> bay.leaves().stream())
                .map(SectionLayout::opening)
                .filter(opening -> Grid.same(opening.y0(), openingBottom()))
                .toList();
        return new Frame(design, plan, floorToCarcass, height, openings, onBottom);
    }

    @Override
    public List<Rect> floors() {
        return floors.isEmpty()
                ? IntStream.range(0, openings.size()).mapToObj(this::opening).toList()
                : floors;
    }

    public double width() {
        return plan.width();
    }

    public double depth() {
        return plan.depth();
    }

    /** Thickness of the carcass's sheet. */
    public double panel() {
        return design.carcass().sheet().material().thickness();
    }

    public double back() {
        return design.carcass().back().material().thickness();
    }

    /** Front edge to the inside of the back. */
    public double insideDepth() {
        return depth() - back();
    }

    /** Depth of every dado and rabbet. */
    public double housing() {
        return design.carcass().housing();
    }

    /** Whether sides, bottom, sub-top, partitions between bays and back only butt against each other. */
    public boolean isButted() {
        return !(design.carcass().joint() instanceof Joint.Housed);
    }

    /** How deep bottom, sub-top and the partitions between bays are let into what they meet. */
    public double engagement() {
        return isButted() ? 0 : housing();
    }

    /** Front edge to the rear edge of a side: a butted back lies over that edge, a housed one in its rabbet. */
    public double sideDepth() {
        return isButted() ? insideDepth() : depth();
    }

    public double top() {
        return floorToCarcass + height;
    }

    public double openingBottom() {
        return floorToCarcass + panel();
    }

    public double openingTop() {
        return top() - panel();
    }

    public double openingLeft(int bay) {
        double left = panel();
        for (int i = 0; i < bay; i++) {
            left += openings.get(i) + panel();
        }
        return left;
    }

    /** A bay's opening seen from the front: x to the right, y is the height. */
    public Rect opening(int bay) {
        double left = openingLeft(bay);
        return new Rect(left, openingBottom(), left + openings.get(bay), openingTop());
    }

    /** Left faces of the partitions. */
    public List<Double> partitions() {
        return IntStream.range(1, openings.size())
                .mapToObj(bay -> openingLeft(bay) - panel())
                .toList();
    }

    /** Whether the wall of an opening in this plane is one of the two sides, not a partition. */
    public boolean isSide(double x) {
        return Grid.same(x, panel()) || Grid.same(x, width() - panel());
    }

    public Box3 box() {
        return new Box3(new Vec3(0, 0, floorToCarcass), new Vec3(width(), depth(), top()));
    }

    public boolean isInset() {
        return design.drawers().mount() == Mount.INSET;
    }
}
