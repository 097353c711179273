package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.carcass.CarcassMaker;
import org.standwright.design.carcass.JointFit;
import org.standwright.design.carcass.ShelfPins;
import org.standwright.design.column.BayFit;
import org.standwright.design.column.BayWidths;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.drawer.DrawerMaker;
import org.standwright.design.drawer.SlidePilots;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Reference;
import org.standwright.design.support.SupportPlan;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/** Works out a machine stand: decisions in, everything at its place out. */
public final class StandBuilder {
    /** The upper of two glued layers is cut over on every edge and trimmed flush, mm (shop practice). */
    private static final double CUT_OVER = 3;

    private StandBuilder() {}

    /**
     * Builds the stand.
     *
     * @throws org.standwright.design.ImpossibleDesignException when no such stand can be built; it names the nearest
     *     that can
     */
    public static Stand build(StandDesign design) {
        SheetFit.oneBoardEach(design);
        new JointFit(design).check();
        var support = SupportPlan.of(design);
        support.check(design);
        new PlanFit(design, support).check();
        var openings = new BayWidths(design).openings();
        var solver = new StackSolver(design, support);
        var stack = solver.solve();
        var frame = new Frame(design, PlanSize.of(design), solver.floorToCarcass(), solver.carcass(), openings);
        var bays = new BayFit(frame).bays();
        var groups = groups(frame, bays, support);
        SheetFit.check(design, groups);
        var hardware = new StandHardware(frame).list(groups, bays, support);
        return new Stand(
                design, stack, frame.box(), bays, Optional.empty(), new Assembly(design.name(), groups, hardware));
    }

    private static List<Group> groups(Frame frame, List<BayLayout> bays, SupportPlan support) {
        var groups = new ArrayList<Group>();
        groups.add(support.group(frame));
        var bores = new ArrayList<>(new SlidePilots(frame, bays).bores());
        bores.addAll(new ShelfPins(frame, bays).bores());
        groups.add(new CarcassMaker(frame, bays).carcass(support.bottomHoles(frame), bores, slides(frame, bays)));
        groups.add(worktop(frame));
        var maker = new DrawerMaker(frame);
        for (var section : drawers(bays)) {
            section.drawers().forEach(drawer -> groups.add(maker.drawer(around(section), drawer)));
        }
        groups.add(Group.fixed("machine", List.of(), machine(frame)));
        return groups;
    }

    private static List<SectionLayout.Drawers> drawers(List<BayLayout> bays) {
        return bays.stream()
                .flatMap(bay -> bay.leaves().stream())
                .filter(SectionLayout.Drawers.class::isInstance)
                .map(SectionLayout.Drawers.class::cast)
                .toList();
    }

    /** The drawers' own opening, which may be a part of their bay's. */
    private static BayLayout around(SectionLayout.Drawers section) {
        return new BayLayout("", section.opening(), List.of(section));
    }

    private static Group worktop(Frame frame) {
        var worktop = frame.design().worktop();
        var over = worktop.overhang();
        var material = worktop.sheet().material();
        double width = frame.width() + over.left() + over.right();
        double depth = frame.depth() + over.front() + over.back();
        var parts = new ArrayList<PlacedPart>();
        for (int layer = 1; layer <= worktop.layers(); layer++) {
            var name = worktop.layers() == 1 ? "worktop" : layer == 1 ? "worktop lower layer" : "worktop upper layer";
            var part = Part.blank(name, material, width, depth);
            double z = frame.top() + (layer - 1) * material.thickness();
            parts.add(new PlacedPart(
                    name,
                    layer == 2 ? part.cutOver(CUT_OVER) : part,
                    new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(-over.left(), -over.front(), z))));
        }
        return Group.fixed("worktop", parts, List.of());
    }

    /** Slides fill the space beside the boxes exactly; they belong to the carcass. */
    private static List<Block> slides(Frame frame, List<BayLayout> bays) {
        var blocks = new ArrayList<Block>();
        double y = DrawerFit.slideFront(frame);
        var slide = frame.design().drawers().slide();
        for (var section : drawers(bays)) {
            for (var drawer : section.drawers()) {
                double z = frame.openingBottom() + drawer.slideLineOnSide() - slide.bodyHeight() / 2;
                blocks.add(slide("left", drawer, section.opening().x0(), y, z, frame));
                blocks.add(slide("right", drawer, section.opening().x1() - slide.sideSpace(), y, z, frame));
            }
        }
        return blocks;
    }

    private static Block slide(String side, DrawerLayout drawer, double x, double y, double z, Frame frame) {
        var slide = frame.design().drawers().slide();
        return new Block(
                "slide " + drawer.name() + " " + side,
                Block.Kind.SLIDE,
                new Box3(
                        new Vec3(x, y, z),
                        new Vec3(x + slide.sideSpace(), y + drawer.slide().length(), z + slide.bodyHeight())));
    }

    /** The machine's base and its whole envelope, in the middle of the carcass, on the worktop. */
    private static List<Block> machine(Frame frame) {
        var machine = frame.design().machine();
        if (machine.reference().kind() == Reference.Kind.WORKTOP) {
            return List.of();
        }
        var worktop = frame.design().worktop();
        double z = frame.top() + worktop.layers() * worktop.sheet().material().thickness();
        double x = frame.width() / 2;
        double y = frame.depth() / 2;
        var base = machine.base();
        var whole = machine.envelope();
        double table = z + machine.feet() + machine.reference().height();
        var blocks = new ArrayList<Block>();
        if (Grid.less(z, table)) {
            blocks.add(new Block(
                    "base of " + machine.name(),
                    Block.Kind.MACHINE,
                    around(x, y, base.width(), base.depth(), z, table)));
        }
        blocks.add(new Block(
                machine.name(),
                Block.Kind.MACHINE,
                around(x, y, whole.width(), whole.depth(), z, z + machine.feet() + whole.height())));
        return blocks;
    }

    private static Box3 around(double x, double y, double width, double depth, double z0, double z1) {
        return new Box3(new Vec3(x - width / 2, y - depth / 2, z0), new Vec3(x + width / 2, y + depth / 2, z1));
    }
}
