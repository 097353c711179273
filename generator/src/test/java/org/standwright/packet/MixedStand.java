package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.Bay;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Hung;
import org.standwright.design.Joint;
import org.standwright.design.Layout;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Dowel;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size3;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.unit.Units;

/**
 * A stand that was put together by hand, with a bit of everything that paper has to show: a drawer over a door with
 * shelves, an open section, one kept clear, a part that is divided again, bars, bands, bolts and holes.
 */
public final class MixedStand {
    public static final Bar BAR = new Bar("oak strip", 40, 20, 700, 2400, Optional.empty());
    public static final Hinge HINGE = new Hinge.Concealed("hinge 35", 35, 12.5, 21.5, 16.5, 37, 32, 60, 50, 60, 110);

    private static final Banding TAPE = new Banding("birch tape", 0.5);
    private static final double DOOR = 300;

    private final Stand plain;
    private final List<PlacedPart> more = new ArrayList<>();
    private Group drawer2a;

    private MixedStand(Units units) {
        plain = StandBuilder.build(Designs.stand(
                        900,
                        Designs.LEVELERS,
                        Designs.planerStand().drawers().mount(),
                        Designs.planerStand().bays())
                .readIn(units));
    }

    public static Stand in(Units units) {
        return new MixedStand(units).stand();
    }

    private Stand stand() {
        var first = first(plain.bays().get(0));
        var second = second(plain.bays().get(1));
        bars();
        var bays = List.of(first, second);
        var drawers = bays.stream()
                .flatMap(bay -> bay.drawers().stream())
                .map(DrawerLayout::name)
                .toList();
        var groups = new ArrayList<Group>();
        for (var group : plain.assembly().groups()) {
            if (group.name().equals("worktop")) {
                groups.add(Group.fixed(
                        "worktop", group.parts().stream().map(MixedStand::bored).toList(), List.of()));
            } else if (group.name().equals("carcass")) {
                groups.add(Group.fixed("carcass", group.parts(), List.of()));
            } else if (!group.name().startsWith("drawer")
                    || drawers.contains(group.name().substring(7))) {
                groups.add(group);
            }
        }
        groups.add(drawer2a);
        groups.add(Group.fixed("more", more, List.of()));
        var hardware = Stream.concat(
                        plain.assembly().hardware().stream(),
                        Stream.of(
                                new Hardware("hexagon bolt M10 x 90", 4, "machine, down through worktop and sub-top"),
                                new Hardware("washer M10, 25 mm or wider", 4, "machine, under the nuts")))
                .toList();
        return new Stand(
                design(plain.design()),
                plain.stack(),
                plain.carcass(),
                bays,
                Optional.of(machine()),
                new Assembly(plain.assembly().name(), groups, hardware));
    }

    private static StandDesign design(StandDesign design) {
        return Draft.of(design, draft -> {
            draft.name = "mixed stand";
            draft.layout = Layout.MIRRORED;
            draft.workingHeight = new WorkingHeight.Beside("table saw", 902, 2, 6);
            var carcass = draft.carcass;
            draft.carcass = new CarcassPlan(
                    carcass.sheet(),
                    carcass.back(),
                    carcass.housing(),
                    carcass.fit(),
                    new Joint.Doweled(new Dowel("dowel 8 x 40", 8, 40)));
            var shelves = new Shelves(Shelves.Kind.ADJUSTABLE, 1);
            draft.bays = List.of(
                    new Bay(
                            OptionalDouble.of(400),
                            List.of(
                                    Designs.given(90),
                                    new Content.Door(OptionalDouble.of(DOOR), HINGE, Hung.LEFT, Optional.of(shelves)))),
                    new Bay(
                            OptionalDouble.empty(),
                            List.of(
                                    new Content.Divided(OptionalDouble.empty(), List.of()),
                                    new Content.Clear(OptionalDouble.of(150), "vacuum", OptionalDouble.of(60)))));
            var plan = draft.drawers;
            draft.drawers = new DrawerPlan(
                    plan.box(),
                    plan.bottom(),
                    plan.front(),
                    new Hang.Runners(BAR),
                    plan.mount(),
                    plan.gap(),
                    plan.bumper(),
                    new Grip.Notch(100, 20),
                    plan.rounding());
        });
    }

    /** A drawer, a door of {@link #DOOR} with a shelf on pins, and open space with a fixed shelf below. */
    private BayLayout first(BayLayout bay) {
        var drawer = bay.drawers().get(0);
        double bottom = drawer.front().y0() - 3;
        var opening = bay.opening();
        var upper = new Rect(opening.x0(), drawer.front().y0(), opening.x1(), opening.y1());
        var front = new Rect(drawer.front().x0(), bottom - DOOR, drawer.front().x1(), bottom);
        var closed = new Rect(opening.x0(), bottom - DOOR + 10, opening.x1(), bottom - 10);
        var door = new DoorLayout("1.2", front, Side.LEFT, HINGE, List.of(60.0, DOOR - 60));
        door(door);
        shelf("shelf 1.2", closed.x0() + 1, closed.x1() - 1, closed.y0() + 128);
        var open = new Rect(opening.x0(), opening.y0(), opening.x1(), closed.y0() - 18);
        shelf("shelf 1.3", open.x0() - 6, open.x1() + 6, open.y0() + 80);
        return new BayLayout(
                "1",
                opening,
                List.of(
                        new SectionLayout.Drawers(upper, List.of(drawer)),
                        new SectionLayout.Closed(
                                closed, List.of(door), List.of(128.0), Optional.of(Shelves.Kind.ADJUSTABLE)),
                        new SectionLayout.Open(open, List.of(80.0), Optional.of(Shelves.Kind.FIXED))));
    }

    /** Divided into a bay with a drawer and one with a pair of doors; kept clear below. */
    private BayLayout second(BayLayout bay) {
        var opening = bay.opening();
        double level = opening.y0() + 200;
        double middle = (opening.x0() + opening.x1()) / 2;
        var left = new Rect(opening.x0(), level, middle - 9, opening.y1());
        var right = new Rect(middle + 9, level, opening.x1(), opening.y1());
        var drawer = bay.drawers().get(0);
        var small = new DrawerLayout(
                "2a.1",
                new Rect(left.x0(), left.y1() - 90, left.x1(), left.y1()),
                90,
                new Size3(left.width() - 26, 500, 60),
                drawer.inside(),
                drawer.slide(),
                drawer.slideLineOnSide(),
                drawer.slideLineOnBox());
        var front = Part.blank("drawer front", Designs.BOARD_18.material(), left.width(), 90);
        var at = new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(left.x0(), -1.5, left.y1() - 90));
        var box = Part.blank("box front", Designs.BOARD_12.material(), left.width() - 26, 60);
        var in = new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(left.x0() + 13, 10.5, left.y1() - 80));
        drawer2a = new Group(
                "drawer 2a.1",
                new Vec3(0, -500, 0),
                List.of(
                        new PlacedPart("drawer 2a.1 front", front, at),
                        new PlacedPart("drawer 2a.1 box front", box, in)),
                List.of());
        double half = right.width() / 2;
        var one = new Rect(right.x0(), level, right.x0() + half - 1.5, opening.y1());
        var other = new Rect(right.x0() + half + 1.5, level, right.x1(), opening.y1());
        var doors = List.of(
                new DoorLayout("2b.1", one, Side.LEFT, HINGE, List.of(60.0, one.height() - 60)),
                new DoorLayout("2b.2", other, Side.RIGHT, HINGE, List.of(60.0, one.height() - 60)));
        doors.forEach(this::door);
        var clear = new Rect(opening.x0(), opening.y0(), opening.x1(), level - 18);
        return new BayLayout(
                "2",
                opening,
                List.of(
                        new SectionLayout.Divided(
                                new Rect(opening.x0(), level, opening.x1(), opening.y1()),
                                List.of(
                                        new BayLayout(
                                                "2a",
                                                left,
                                                List.of(
                                                        new SectionLayout.Drawers(small.front(), List.of(small)),
                                                        new SectionLayout.Open(
                                                                new Rect(
                                                                        left.x0(),
                                                                        left.y0(),
                                                                        left.x1(),
                                                                        left.y1() - 108),
                                                                List.of(),
                                                                Optional.empty()))),
                                        new BayLayout(
                                                "2b",
                                                right,
                                                List.of(new SectionLayout.Closed(
                                                        right, doors, List.of(), Optional.empty()))))),
                        new SectionLayout.Clear(clear, "vacuum")));
    }

    private void door(DoorLayout door) {
        var front = door.front();
        more.add(new PlacedPart(
                "door " + door.name(),
                Part.blank("door", Designs.BOARD_18.material(), front.height(), front.width())
                        .banded(Bands.around(Optional.of(TAPE))),
                new Placement(Axis.Z_PLUS, Axis.X_MINUS, new Vec3(front.x1(), -19.5, front.y0()))));
    }

    private void shelf(String label, double x0, double x1, double underside) {
        more.add(new PlacedPart(
                label,
                Part.blank("shelf", Designs.BOARD_18.material(), x1 - x0, 500).banded(Bands.atY0(Optional.of(TAPE))),
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(x0, 0, underside))));
    }

    private void bars() {
        var oak = Material.bar(BAR.name(), BAR.width(), BAR.thickness(), BAR.density());
        for (int i = 0; i < 4; i++) {
            more.add(new PlacedPart(
                    "drawer 1.1 " + (i % 2 == 0 ? "left " : "right ") + (i < 2 ? "runner" : "kicker"),
                    Part.blank("runner", oak, i < 2 ? 500 : 480, 40),
                    new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(100 + 60 * i, 2, 400))));
        }
    }

    /** The upper layer with four bolts, a hole for a hose and an opening for a plate. */
    private static PlacedPart bored(PlacedPart layer) {
        var part = layer.part()
                .with(
                        Hole.through(120, 120, 11, "machine bolt"),
                        Hole.through(600, 120, 11, "machine bolt"),
                        Hole.through(120, 400, 11, "machine bolt"),
                        Hole.through(600, 400, 11, "machine bolt"),
                        Hole.through(360, 500, 66, "dust hose"),
                        Pocket.through(new Rect(250, 160, 470, 340), 10, "opening under plate"));
        return new PlacedPart(layer.label(), part, layer.placement());
    }

    private MachineLayout machine() {
        double top = plain.worktop().max().z();
        return new MachineLayout(
                new Box3(new Vec3(80, 100, top), new Vec3(640, 460, top + 110)),
                new Box3(new Vec3(60, -70, top), new Vec3(660, 630, top + 480)),
                Side.FRONT,
                Optional.of(Side.LEFT),
                List.of(new Point2(120, 100), new Point2(600, 100), new Point2(120, 380), new Point2(600, 380)),
                new Vec3(360, 280, top + 240));
    }
}
