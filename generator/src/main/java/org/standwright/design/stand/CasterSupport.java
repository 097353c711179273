package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.Caster;
import org.standwright.design.HeightStack.Term;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/**
 * Four casters under block strips. The bolts come down through the blocks, their heads on washers in recesses that the
 * bottom panel covers, so that nothing of them stands in a drawer's way and the nuts are reached from below.
 */
record CasterSupport(Caster caster, BlockStrips strips) implements SupportPlan {
    /** Wood around the plate on each side, mm. */
    private static final double MARGIN = 10;
    /** Washers on plywood are at least 25 mm (shop practice); the recess takes one with play, mm. */
    private static final double RECESS = 26;
    /** Recess for head and washer: 5.3 mm for an M8 head (ISO 4017) and 2 mm for a washer, with play, mm. */
    private static final double RECESS_DEPTH = 9;
    /** Plate, washer, nut and thread end below the wood, mm; common practice, no source. */
    private static final double BELOW_WOOD = 18;
    /** Bolts are sold in steps of 5 mm. */
    private static final double BOLT_STEP = 5;

    @Override
    public List<Term> terms() {
        return List.of(Term.fixed("casters", caster.height()), strips.term());
    }

    @Override
    public Group group(Frame frame) {
        fits(frame);
        var lower = new ArrayList<Hole>();
        var upper = new ArrayList<Hole>();
        var blocks = new ArrayList<Block>();
        for (double x : plateCentres(frame)) {
            for (double dx :
                    new double[] {-caster.holes().depth() / 2, caster.holes().depth() / 2}) {
                for (double dy : new double[] {
                    -caster.holes().width() / 2, caster.holes().width() / 2
                }) {
                    double y = width() / 2 + dy;
                    lower.add(Hole.through(x + dx, y, caster.holeDiameter(), "caster bolt"));
                    upper.add(Hole.through(x + dx, y, caster.holeDiameter(), "caster bolt"));
                    upper.add(Hole.blind(Face.SHOW, x + dx, y, RECESS, RECESS_DEPTH, "recess for head and washer"));
                }
            }
            blocks.add(caster("left", width() / 2, x));
            blocks.add(caster("right", frame.width() - width() / 2, x));
        }
        return Group.fixed("support", strips.parts(frame, width(), lower, upper), blocks);
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        double grip = strips.bolt(BELOW_WOOD) - RECESS_DEPTH;
        long bolt = 5 * (long) StrictMath.ceil(grip / BOLT_STEP);
        var size = "M" + Math.round(caster.bolt());
        return List.of(
                new Hardware(caster.name() + (caster.brake() ? ", with brake" : ""), 4, "casters"),
                new Hardware("hexagon bolt " + size + " x " + bolt, 16, "casters"),
                new Hardware("washer " + size + ", 25 mm or wider", 16, "casters, under the heads"),
                new Hardware("washer " + size, 16, "casters, under the nuts"),
                new Hardware("lock nut " + size, 16, "casters"));
    }

    @Override
    public List<Hole> bottomHoles(Frame frame) {
        return strips.bottomHoles(frame, width(), 2 * MARGIN + caster.plate().depth());
    }

    /** Width of a strip. */
    private double width() {
        return caster.plate().width() + 2 * MARGIN;
    }

    /** Distances of the plates' centres from the front edge. */
    private double[] plateCentres(Frame frame) {
        double fromEnd = MARGIN + caster.plate().depth() / 2;
        return new double[] {fromEnd, frame.depth() - fromEnd};
    }

    private Block caster(String side, double x, double y) {
        double halfX = caster.plate().width() / 2;
        double halfY = caster.plate().depth() / 2;
        return new Block(
                side + " caster at " + Math.round(y) + " mm",
                Block.Kind.CASTER,
                new Box3(new Vec3(x - halfX, y - halfY, 0), new Vec3(x + halfX, y + halfY, caster.height())));
    }

    /** Strips side by side within the plan, and wheels that can swing past each other. */
    private void fits(Frame frame) {
        var units = frame.design().unit();
        double between = Math.max(2 * caster.swivelRadius(), caster.plate().depth());
        double depth = between + 2 * MARGIN + caster.plate().depth();
        if (Grid.less(frame.depth(), depth)) {
            throw new ImpossibleDesignException(
                    "/plan/depth",
                    "A plan of " + units.length(frame.depth()) + " depth is too short for two of " + caster.name()
                            + " to swivel past each other: it takes " + units.length(depth) + ".",
                    List.of("Make the plan " + Exact.up(units, depth) + " deep, or use smaller casters."));
        }
        double width = Math.max(2 * width(), between + width());
        if (Grid.less(frame.width(), width)) {
            throw new ImpossibleDesignException(
                    "/plan/width",
                    "A plan of " + units.length(frame.width()) + " width is too narrow for two of " + caster.name()
                            + " side by side: it takes " + units.length(width) + ".",
                    List.of("Make the plan " + Exact.up(units, width) + " wide, or use smaller casters."));
        }
    }
}
