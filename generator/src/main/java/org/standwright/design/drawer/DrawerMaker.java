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
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.BoxHeights;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.column.Running;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
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

    private final Frame frame;
    private final DrawerPlan plan;
    private final Material wood;
    private final BoxHeights heights;
    private final ScrewChoice screws;
    private final Running running;
    private final FrontPanel fronts;

    public DrawerMaker(Frame frame) {
        this.frame = frame;
        this.plan = frame.design().drawers();
        this.wood = plan.box().material();
        this.heights = new BoxHeights(frame.design());
        this.screws = new ScrewChoice(frame.design());
        this.running = Running.of(frame.design());
        this.fronts = new FrontPanel(frame.design());
    }

    /** The drawers of one bay, from top to bottom, with those of the bays within it. */
    public List<Group> drawers(BayLayout bay) {
        return bay.leaves(SectionLayout.Drawers.class)
                .flatMap(section -> section.drawers().stream().map(drawer -> drawer(section.opening(), drawer)))
                .toList();
    }

    private Group drawer(Rect opening, DrawerLayout drawer) {
        var corner = corner(opening, drawer);
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
        var through = new BoxFront(frame.design(), opening, drawer);
        parts.add(new PlacedPart(
                label + "box front",
                boxEnd("box front", drawer, through).with(through.features()),
                new Placement(
                        Axis.X_PLUS,
                        Axis.Z_PLUS,
                        new Vec3(corner.x() + wall - tongue, corner.y() + wall, corner.z()))));
        parts.add(new PlacedPart(
                label + "box back",
                boxEnd("box back", drawer, through),
                new Placement(Axis.X_MINUS, Axis.Z_PLUS, new Vec3(x1 - wall + tongue, rear - wall, corner.z()))));
        parts.add(bottom(drawer, label, corner));
        parts.add(front(drawer, label));
        return new Group(label.strip(), new Vec3(0, -drawer.travel(), 0), parts, List.of());
    }

    /** Lower left front corner of the box. */
    private Vec3 corner(Rect opening, DrawerLayout drawer) {
        double cellBottom = Math.max(drawer.front().y0(), opening.y0());
        return new Vec3(opening.x0() + running.sideSpace(), DrawerFit.boxFront(frame), cellBottom + running.below());
    }

    private double rabbetDepth() {
        return BoxFront.tongue(frame.design());
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
        return drawer.slide().stream()
                .flatMap(slide -> slide.boxHoles().stream())
                .mapToDouble(hole -> hole + member)
                .filter(x -> x > wood.thickness() && x < drawer.box().depth() - wood.thickness());
    }

    private Part side(DrawerLayout drawer, double[] holes) {
        double length = drawer.box().depth();
        double height = drawer.box().height();
        double wall = wood.thickness();
        return Part.blank("drawer side", wood, length, height)
                .with(
                        Channel.across(Face.BENCH, 0, wall, height, rabbetDepth()),
                        Channel.across(Face.BENCH, length - wall, length, height, rabbetDepth()),
                        groove(length))
                .with(DoubleStream.of(holes)
                        .sorted()
                        .mapToObj(x -> slidePilot(x, drawer.slideLineOnBox().orElseThrow()))
                        .toList());
    }

    private Hole slidePilot(double x, double y) {
        double depth = screws.slideDepth(screws.slideInto(wood.thickness()));
        double pilot = frame.design().screws().slide().pilot();
        return Hole.blind(Face.SHOW, x, y, pilot, depth, "slide pilot");
    }

    private Channel groove(double length) {
        double y = BoxHeights.GROOVE_ABOVE_EDGE;
        return Channel.along(Face.BENCH, y, y + heights.grooveWidth(), length, heights.grooveDepth());
    }

    private Part boxEnd(String name, DrawerLayout drawer, BoxFront through) {
        double length = through.length();
        return Part.blank(name, wood, length, drawer.box().height()).with(groove(length));
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

    private PlacedPart front(DrawerLayout drawer, String label) {
        var area = drawer.front();
        double y = DrawerFit.boxFront(frame);
        return new PlacedPart(
                label + "front",
                fronts.drawer(area.width(), area.height()),
                fronts.isUpright()
                        ? new Placement(Axis.Z_PLUS, Axis.X_MINUS, new Vec3(area.x1(), y, area.y0()))
                        : new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(area.x0(), y, area.y0())));
    }
}
