package org.standwright.design.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.DrawerPlan;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.column.BoxHeights;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * The parts of one drawer: two sides with rabbets at both ends, front and back between them, a bottom in a groove on
 * all four, and a separate front on the box.
 */
public final class DrawerMaker {
    /** Play of the bottom in its groove on each edge, mm. */
    private static final double BOTTOM_PLAY = 0.5;
    /** How much larger the hole in the box is than the screw, so that the front can be set: ± 2 mm. */
    private static final double SETTING = 4;
    /** What an inset front is cut over on every edge, mm; common practice, no source. */
    private static final double INSET_CUT_OVER = 1;
    /** Screws of the front stand this far from the box's sides, mm, or at a quarter of a narrow front. */
    private static final double FRONT_SCREW_INSET = 60;

    private final Frame frame;
    private final DrawerPlan plan;
    private final Material wood;
    private final BoxHeights heights;
    private final ScrewChoice screws;

    public DrawerMaker(Frame frame) {
        this.frame = frame;
        this.plan = frame.design().drawers();
        this.wood = plan.box().material();
        this.heights = new BoxHeights(frame.design());
        this.screws = new ScrewChoice(frame.design());
    }

    public Group drawer(BayLayout bay, DrawerLayout drawer) {
        var corner = corner(bay, drawer);
        double x1 = corner.x() + drawer.box().width();
        double rear = corner.y() + drawer.box().depth();
        double wall = wood.thickness();
        var label = "drawer " + drawer.name() + " ";
        var parts = new ArrayList<PlacedPart>();
        parts.add(new PlacedPart(
                label + "left side",
                leftSide(drawer),
                new Placement(Axis.Y_MINUS, Axis.Z_PLUS, new Vec3(corner.x() + wall, rear, corner.z()))));
        parts.add(new PlacedPart(
                label + "right side",
                rightSide(drawer),
                new Placement(Axis.Y_PLUS, Axis.Z_PLUS, new Vec3(x1 - wall, corner.y(), corner.z()))));
        double tongue = rabbetDepth();
        parts.add(new PlacedPart(
                label + "box front",
                boxFront(drawer),
                new Placement(
                        Axis.X_PLUS,
                        Axis.Z_PLUS,
                        new Vec3(corner.x() + wall - tongue, corner.y() + wall, corner.z()))));
        parts.add(new PlacedPart(
                label + "box back",
                boxEnd("box back", drawer),
                new Placement(Axis.X_MINUS, Axis.Z_PLUS, new Vec3(x1 - wall + tongue, rear - wall, corner.z()))));
        parts.add(bottom(drawer, label, corner));
        parts.add(front(drawer, label));
        return new Group(label.strip(), new Vec3(0, -drawer.slide().travel(), 0), parts, List.of());
    }

    /** Lower left front corner of the box. */
    private Vec3 corner(BayLayout bay, DrawerLayout drawer) {
        var opening = bay.opening();
        double cellBottom = Math.max(drawer.front().y0(), opening.y0());
        return new Vec3(
                opening.x0() + plan.slide().sideSpace(), DrawerFit.boxFront(frame), cellBottom + BoxHeights.BELOW);
    }

    private double rabbetDepth() {
        return StrictMath.floor(wood.thickness()) / 2;
    }

    private Part leftSide(DrawerLayout drawer) {
        double length = drawer.box().depth();
        return side(drawer, slideHoles(drawer).map(x -> length - x).toArray());
    }

    private Part rightSide(DrawerLayout drawer) {
        return side(drawer, slideHoles(drawer).toArray());
    }

    /** Positions of the slide's screws behind the box's front face, where no rabbet thins the wood. */
    private DoubleStream slideHoles(DrawerLayout drawer) {
        double member = DrawerFit.slideFront(frame) - DrawerFit.boxFront(frame);
        return drawer.slide().boxHoles().stream()
                .mapToDouble(hole -> hole + member)
                .filter(x -> x > wood.thickness() && x < drawer.box().depth() - wood.thickness());
    }

    private Part side(DrawerLayout drawer, double[] holes) {
        double length = drawer.box().depth();
        double height = drawer.box().height();
        double wall = wood.thickness();
        double depth = screws.slideDepth(screws.slideInto(wall));
        return Part.blank("drawer side", wood, length, height)
                .with(
                        Channel.across(Face.BENCH, 0, wall, height, rabbetDepth()),
                        Channel.across(Face.BENCH, length - wall, length, height, rabbetDepth()),
                        groove(length))
                .with(DoubleStream.of(holes)
                        .sorted()
                        .mapToObj(x -> Hole.blind(
                                Face.SHOW,
                                x,
                                heights.slideLine(),
                                frame.design().screws().slide().pilot(),
                                depth,
                                "slide pilot"))
                        .toList());
    }

    private Channel groove(double length) {
        double y = BoxHeights.GROOVE_ABOVE_EDGE;
        return Channel.along(Face.BENCH, y, y + heights.grooveWidth(), length, heights.grooveDepth());
    }

    private Part boxEnd(String name, DrawerLayout drawer) {
        double length = drawer.box().width() - 2 * wood.thickness() + 2 * rabbetDepth();
        return Part.blank(name, wood, length, drawer.box().height()).with(groove(length));
    }

    private Part boxFront(DrawerLayout drawer) {
        var end = boxEnd("box front", drawer);
        double bore = frame.design().screws().panel().diameter() + SETTING;
        double inset = Math.min(FRONT_SCREW_INSET, end.length() / 4);
        double y = Math.max(end.width() / 2, heights.slideLine());
        return end.with(
                Hole.through(inset, y, bore, "front screw, oversize"),
                Hole.through(end.length() - inset, y, bore, "front screw, oversize"));
    }

    /** Grain along the shorter span. */
    private PlacedPart bottom(DrawerLayout drawer, String label, Vec3 corner) {
        double wall = wood.thickness();
        double into = heights.grooveDepth() - BOTTOM_PLAY;
        double width = drawer.box().width() - 2 * wall + 2 * into;
        double depth = drawer.box().depth() - 2 * wall + 2 * into;
        double x0 = corner.x() + wall - into;
        double y0 = corner.y() + wall - into;
        double z = corner.z() + BoxHeights.GROOVE_ABOVE_EDGE;
        var material = plan.bottom().material();
        return width <= depth
                ? new PlacedPart(
                        label + "bottom",
                        Part.blank("drawer bottom", material, width, depth),
                        new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(x0, y0, z)))
                : new PlacedPart(
                        label + "bottom",
                        Part.blank("drawer bottom", material, depth, width),
                        new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(x0 + width, y0, z)));
    }

    /** An inset front is cut over and trimmed last, to the opening as it turned out. */
    private PlacedPart front(DrawerLayout drawer, String label) {
        var area = drawer.front();
        var blank = Part.blank("drawer front", plan.front().material(), area.width(), area.height());
        return new PlacedPart(
                label + "front",
                frame.isInset() ? blank.cutOver(INSET_CUT_OVER) : blank,
                new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(area.x0(), DrawerFit.boxFront(frame), area.y0())));
    }
}
