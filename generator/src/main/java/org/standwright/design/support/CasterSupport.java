package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.part.Hole;

/**
 * Four casters under two layers of wood. The bolts come down through the layers, their heads on washers in recesses
 * that the bottom panel covers, so that nothing of them stands in a drawer's way and the nuts are reached from below.
 */
record CasterSupport(CasterSet casters, SupportBed bed) implements SupportPlan {
    private static final List<Side> ENDS = List.of(Side.FRONT, Side.BACK);
    private static final List<Side> SIDES = List.of(Side.LEFT, Side.RIGHT);

    static CasterSupport of(Support.Casters support, StandDesign design) {
        new CasterFit(design).check(support);
        var casters = CasterSet.of(support, design);
        var bed = SupportBed.of(support.bed(), "caster", casters.strip(), design);
        bed.layers().check(Math.max(casters.near().recessDepth(), casters.far().recessDepth()));
        var plan = new CasterSupport(casters, bed);
        BedFit.check(design, bed, plan.leastAcross());
        return plan;
    }

    @Override
    public List<Term> terms() {
        return List.of(
                Term.fixed("casters", casters.near().caster().height()),
                bed.layers().term());
    }

    @Override
    public Group group(Frame frame) {
        return Group.fixed("support", bed.parts(frame, bolts(frame)), blocks(frame));
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        var screws = bed.layers().screws(bottomHoles(frame).size());
        return Stream.concat(casters.hardware(bed.layers().height()).stream(), Stream.of(screws))
                .toList();
    }

    @Override
    public List<Hole> bottomHoles(Frame frame) {
        return bed.bottomHoles(frame, bolts(frame));
    }

    /** A bed within the plan, screws between the recesses, and wheels that swing past each other and all plates. */
    @Override
    public Size2 leastPlan() {
        return new Size2(Math.max(bed.leastWidth(), leastAcross()), leastAlong());
    }

    private double leastAcross() {
        return ENDS.stream()
                .mapToDouble(end -> casters.strip()
                        + casters.at(end, Side.LEFT).reachAcross()
                        + casters.at(end, Side.RIGHT).reachAcross())
                .max()
                .orElseThrow();
    }

    private double leastAlong() {
        return SIDES.stream()
                .mapToDouble(side -> leastAlong(casters.at(Side.FRONT, side), casters.at(Side.BACK, side)))
                .max()
                .orElseThrow();
    }

    private static double leastAlong(CasterSeat front, CasterSeat back) {
        double between = Math.max(
                front.reachAlong() + back.reachAlong(),
                front.recessesAlong() + SupportBed.FOR_SCREWS + back.recessesAlong());
        return front.fromEnd() + between + back.fromEnd();
    }

    private List<Fixing> bolts(Frame frame) {
        var bolts = new ArrayList<Fixing>();
        for (var end : ENDS) {
            for (var side : SIDES) {
                var seat = casters.at(end, side);
                bolts.addAll(seat.bolts(x(side, frame), y(end, seat, frame)));
            }
        }
        return bolts;
    }

    private List<Block> blocks(Frame frame) {
        var blocks = new ArrayList<Block>();
        for (var end : ENDS) {
            for (var side : SIDES) {
                var seat = casters.at(end, side);
                double y = y(end, seat, frame);
                var label = (side == Side.LEFT ? "left" : "right") + " caster at " + Math.round(y) + " mm";
                blocks.add(seat.block(label, x(side, frame), y));
            }
        }
        return blocks;
    }

    private double x(Side side, Frame frame) {
        double fromSide = casters.strip() / 2;
        return side == Side.LEFT ? fromSide : frame.width() - fromSide;
    }

    private static double y(Side end, CasterSeat seat, Frame frame) {
        return end == Side.FRONT ? seat.fromEnd() : frame.depth() - seat.fromEnd();
    }
}
