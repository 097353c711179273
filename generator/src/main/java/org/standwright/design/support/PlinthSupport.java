package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * A frame on pads, set back at the front for the toes, flush with the inside of the back: sides under the carcass's
 * sides, a rail under every partition, front and back housed between them.
 */
record PlinthSupport(Support.Plinth plinth, StandDesign design) implements SupportPlan {
    /** Shortest plinth side that still frames a stand, mm. */
    private static final double LEAST_DEPTH = 100;

    static PlinthSupport of(Support.Plinth plinth, StandDesign design) {
        var plan = new PlinthSupport(plinth, design);
        plan.checkToeSpace();
        return plan;
    }

    @Override
    public List<Term> terms() {
        return List.of(Term.fixed("pads", plinth.pads()), Term.fixed("plinth", plinth.height()));
    }

    @Override
    public Group group(Frame frame) {
        var parts = new ArrayList<PlacedPart>();
        parts.add(side("left plinth side", frame, true));
        parts.add(side("right plinth side", frame, false));
        parts.add(crosspiece("plinth front", frame, true));
        parts.add(crosspiece("plinth back", frame, false));
        for (int i = 0; i < frame.partitions().size(); i++) {
            parts.add(rail(i, frame));
        }
        return Group.fixed("support", parts, pads().blocks(frame, plinth.toeSpace()));
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        return pads().hardware(frame);
    }

    /** Two above the plinth's front and two above its back in every bay. */
    @Override
    public List<Hole> bottomHoles(Frame frame) {
        var holes = new ArrayList<Hole>();
        double bore = design.screws().panel().clearance();
        for (var floor : frame.floors()) {
            for (double part : new double[] {0.25, 0.75}) {
                double x = floor.x0() + part * floor.width();
                holes.add(Hole.through(x, plinth.toeSpace() + frame.panel() / 2, bore, "plinth screw"));
                holes.add(Hole.through(x, frame.insideDepth() - frame.panel() / 2, bore, "plinth screw"));
            }
        }
        return holes;
    }

    @Override
    public Size2 leastPlan() {
        return new Size2(pads().leastPlan().width(), plinth.toeSpace() + leastBehindToes());
    }

    /** Refuses a toe space that leaves no frame behind it, unless the plan itself is too shallow for any. */
    private void checkToeSpace() {
        double deepest = PlanSize.of(design).depth() - leastBehindToes();
        if (!Grid.less(deepest, 0) && Grid.less(deepest, plinth.toeSpace())) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/support/toeSpace",
                    "A toe space of " + units.length(plinth.toeSpace()) + " leaves too little of a plan "
                            + units.length(PlanSize.of(design).depth())
                            + " deep: behind it the plinth and the back take "
                            + units.length(leastBehindToes()) + ".",
                    List.of(
                            "Make it " + Exact.length(units, Exact.onTapeDown(units, deepest)) + " or less.",
                            "Or make "
                                    + PlanChange.depth(
                                                    design,
                                                    Exact.onTapeUp(
                                                            units, leastPlan().depth()))
                                            .words()
                                    + "."));
        }
    }

    private double leastBehindToes() {
        return LEAST_DEPTH + design.carcass().back().material().thickness();
    }

    /** Depth of its own rabbets and dados, however the carcass above it is joined. */
    private double housing() {
        return design.carcass().housing();
    }

    private PadSupport pads() {
        return new PadSupport(plinth.pads());
    }

    private Material wood() {
        return design.carcass().sheet().material();
    }

    private double depth(Frame frame) {
        return frame.insideDepth() - plinth.toeSpace();
    }

    /** Rabbets at both ends of its inside take front and back. */
    private PlacedPart side(String label, Frame frame, boolean left) {
        double length = depth(frame);
        double panel = frame.panel();
        var part = Part.blank("plinth side", wood(), length, plinth.height())
                .with(
                        Channel.across(Face.BENCH, 0, panel, plinth.height(), housing()),
                        Channel.across(Face.BENCH, length - panel, length, plinth.height(), housing()));
        return new PlacedPart(
                label,
                part,
                left
                        ? new Placement(Axis.Y_MINUS, Axis.Z_PLUS, new Vec3(panel, frame.insideDepth(), plinth.pads()))
                        : new Placement(
                                Axis.Y_PLUS,
                                Axis.Z_PLUS,
                                new Vec3(frame.width() - panel, plinth.toeSpace(), plinth.pads())));
    }

    /** Front or back; dados on its inside take the rails. */
    private PlacedPart crosspiece(String label, Frame frame, boolean front) {
        double left = frame.panel() - housing();
        double length = frame.width() - 2 * left;
        double fit = design.carcass().fit();
        var part = Part.blank(label, wood(), length, plinth.height())
                .with(frame.partitions().stream()
                        .map(x -> front ? x - left : length - (x - left) - frame.panel())
                        .map(x -> Channel.across(
                                Face.BENCH, x - fit / 2, x + frame.panel() + fit / 2, plinth.height(), housing()))
                        .toList());
        return new PlacedPart(
                label,
                part,
                front
                        ? new Placement(
                                Axis.X_PLUS,
                                Axis.Z_PLUS,
                                new Vec3(left, plinth.toeSpace() + frame.panel(), plinth.pads()))
                        : new Placement(
                                Axis.X_MINUS,
                                Axis.Z_PLUS,
                                new Vec3(left + length, frame.insideDepth() - frame.panel(), plinth.pads())));
    }

    private PlacedPart rail(int index, Frame frame) {
        double length = depth(frame) - 2 * frame.panel() + 2 * housing();
        double x = frame.partitions().get(index);
        return new PlacedPart(
                "plinth rail " + (index + 1),
                Part.blank("plinth rail", wood(), length, plinth.height()),
                new Placement(
                        Axis.Y_PLUS,
                        Axis.Z_PLUS,
                        new Vec3(x, plinth.toeSpace() + frame.panel() - housing(), plinth.pads())));
    }
}
