package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.PartsTogether;
import org.standwright.design.built.Stand;
import org.standwright.design.carcass.BackFit;
import org.standwright.design.carcass.ButtJoints;
import org.standwright.design.carcass.CarcassMaker;
import org.standwright.design.carcass.JointFit;
import org.standwright.design.carcass.ShelfPins;
import org.standwright.design.column.BayFit;
import org.standwright.design.column.BayWidths;
import org.standwright.design.door.DoorHinges;
import org.standwright.design.door.DoorMaker;
import org.standwright.design.door.DoorRoom;
import org.standwright.design.door.DoorRules;
import org.standwright.design.drawer.DrawerMaker;
import org.standwright.design.drawer.NotchFit;
import org.standwright.design.drawer.RunnerFit;
import org.standwright.design.drawer.RunnerMaker;
import org.standwright.design.drawer.SlideBlocks;
import org.standwright.design.drawer.SlidePilots;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.support.SupportPlan;
import org.standwright.design.top.Top;

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
        BackFit.check(design);
        new DoorRules(design).check();
        new RunnerFit(design).check();
        var support = SupportPlan.of(design);
        var plan = new PlanFit(design, support);
        plan.check();
        var openings = new BayWidths(design).openings();
        var solver = new StackSolver(design, support);
        var stack = solver.solve();
        var empty = new Frame(design, PlanSize.of(design), solver.floorToCarcass(), solver.carcass(), openings);
        var bays = new BayFit(empty).bays();
        var frame = empty.around(bays);
        new RunnerFit(design).check(bays);
        new DoorRoom(frame).check(bays);
        new NotchFit(design).check(bays);
        var top = new Top(frame);
        var groups = new ButtJoints(frame).bored(top.cut(groups(frame, bays, support, top), bays));
        var parts = groups.stream().flatMap(group -> group.parts().stream()).toList();
        StockFit.check(design, parts);
        SheetFit.check(design, groups, plan.least());
        StripFit.check(design, PartsTogether.of(design, bays, parts));
        var hardware = new ArrayList<>(new StandHardware(frame).list(groups, bays, support));
        hardware.addAll(top.hardware());
        return new Stand(
                written, stack, frame.box(), bays, top.machine(), new Assembly(design.name(), groups, hardware));
    }

    private static List<Group> groups(Frame frame, List<BayLayout> bays, SupportPlan support, Top top) {
        var groups = new ArrayList<Group>();
        groups.add(support.group(frame));
        groups.add(carcass(frame, bays, support));
        groups.add(top.worktop());
        var drawers = new DrawerMaker(frame);
        var doors = new DoorMaker(frame);
        for (var bay : bays) {
            groups.addAll(drawers.drawers(bay));
            groups.addAll(doors.doors(bay));
        }
        groups.add(top.standing());
        return groups;
    }

    /** The panels with what is fixed to them: runners, slides and hinges. */
    private static Group carcass(Frame frame, List<BayLayout> bays, SupportPlan support) {
        var runners = new RunnerMaker(frame, bays);
        var hinges = new DoorHinges(frame, bays);
        var bores = new ArrayList<>(new SlidePilots(frame, bays).bores());
        bores.addAll(runners.pilots());
        bores.addAll(hinges.pilots());
        bores.addAll(new ShelfPins(frame, bays).bores());
        var blocks = new ArrayList<>(new SlideBlocks(frame).of(bays));
        blocks.addAll(hinges.blocks());
        var panels = new CarcassMaker(frame, bays).carcass(support.bottomHoles(frame), bores, blocks);
        var parts = new ArrayList<>(panels.parts());
        parts.addAll(runners.parts());
        return Group.fixed(panels.name(), parts, blocks);
    }
}
