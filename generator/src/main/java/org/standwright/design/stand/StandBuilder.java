package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
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
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.support.SupportPlan;
import org.standwright.design.top.Top;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** Works out a machine stand: decisions in, everything at its place out. */
public final class StandBuilder {
    private StandBuilder() {}

    /**
     * Builds the stand.
     *
     * @throws org.standwright.design.ImpossibleDesignException when no such stand can be built; it names the nearest
     *     that can
     */
    public static Stand build(StandDesign design) {
        if (design.layout() == Layout.AS_WRITTEN) {
            return build(design, onTape(design));
        }
        var mirrored = new Mirrored(onTape(design));
        try {
            return build(design, mirrored.design());
        } catch (ImpossibleDesignException refusal) {
            throw refusal.at(mirrored.written(refusal.field()));
        }
    }

    /** A height worked out from an elbow goes to the nearest mark of the tape. */
    private static StandDesign onTape(StandDesign design) {
        return design.workingHeight() instanceof WorkingHeight.Elbow elbow
                ? design.at(new WorkingHeight.Given(Exact.onTape(design.unit(), elbow.height())))
                : design;
    }

    /**
     * @param written as the maker wrote it
     * @param design as it is built
     */
    private static Stand build(StandDesign written, StandDesign design) {
        SheetFit.oneBoardEach(design);
        new JointFit(design).check();
        var support = SupportPlan.of(design);
        new PlanFit(design, support).check();
        var openings = new BayWidths(design).openings();
        var solver = new StackSolver(design, support);
        var stack = solver.solve();
        var frame = new Frame(design, PlanSize.of(design), solver.floorToCarcass(), solver.carcass(), openings);
        var bays = new BayFit(frame).bays();
        var top = new Top(frame);
        var groups = top.cut(groups(frame, bays, support, top), bays);
        SheetFit.check(design, groups);
        var hardware = new ArrayList<>(new StandHardware(frame).list(groups, bays, support));
        hardware.addAll(top.hardware());
        return new Stand(
                written, stack, frame.box(), bays, top.machine(), new Assembly(design.name(), groups, hardware));
    }

    private static List<Group> groups(Frame frame, List<BayLayout> bays, SupportPlan support, Top top) {
        var groups = new ArrayList<Group>();
        groups.add(support.group(frame));
        var bores = new ArrayList<>(new SlidePilots(frame, bays).bores());
        bores.addAll(new ShelfPins(frame, bays).bores());
        groups.add(new CarcassMaker(frame, bays).carcass(support.bottomHoles(frame), bores, slides(frame, bays)));
        groups.add(top.worktop());
        var maker = new DrawerMaker(frame);
        for (var section : drawers(bays)) {
            section.drawers().forEach(drawer -> groups.add(maker.drawer(around(section), drawer)));
        }
        groups.add(top.standing());
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
}
