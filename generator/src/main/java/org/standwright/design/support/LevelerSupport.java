package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;

/** Four levelers in drive-in nuts, the nuts' flanges let into the top of two layers and held down by the bottom. */
record LevelerSupport(Leveler leveler, SupportBed bed) implements SupportPlan {
    /** Width of wood that a leveler takes along each side, mm. */
    private static final double WIDTH = 80;
    /** Leveler's centre from the front and rear edges, mm. */
    private static final double FROM_END = 50;
    /** Play of the flange in its recess, mm. */
    private static final double PLAY = 1;

    private static final double RECESS_DEPTH = 2.5;

    static LevelerSupport of(Support.Levelers support, StandDesign design) {
        var bed = SupportBed.of(support.bed(), "leveler", WIDTH, design);
        var plan = new LevelerSupport(support.leveler(), bed);
        bed.layers().check(RECESS_DEPTH);
        plan.checkNut(design);
        BedFit.check(design, bed, plan.leastAcross());
        return plan;
    }

    @Override
    public List<Term> terms() {
        var range = leveler.height();
        return List.of(
                new Term("levelers", range.usual(), range.usual() - range.least(), range.most() - range.usual()),
                bed.layers().term());
    }

    @Override
    public Group group(Frame frame) {
        var nuts = nuts(frame);
        var blocks = nuts.stream().map(nut -> block(nut, frame)).toList();
        return Group.fixed("support", bed.parts(frame, nuts), blocks);
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        return List.of(
                new Hardware(leveler.name(), 4, "levelers"),
                new Hardware(
                        "drive-in nut, for a bore of " + frame.design().unit().length(leveler.nutBore())
                                + ", if none comes with the levelers",
                        4,
                        "levelers"),
                bed.layers().screws(bottomHoles(frame).size()));
    }

    @Override
    public List<Hole> bottomHoles(Frame frame) {
        return bed.bottomHoles(frame, nuts(frame));
    }

    @Override
    public Size2 leastPlan() {
        double between = Math.max(leveler.base(), widest() + SupportBed.FOR_SCREWS);
        return new Size2(Math.max(bed.leastWidth(), leastAcross()), 2 * FROM_END + between);
    }

    private double leastAcross() {
        return WIDTH + Math.max(leveler.base(), widest());
    }

    /** Of the wood that a nut takes away, mm. */
    private double widest() {
        return Math.max(leveler.nutFlange() + PLAY, leveler.nutBore());
    }

    private void checkNut(StandDesign design) {
        double room = Math.min(WIDTH, 2 * FROM_END);
        if (Grid.less(room, widest())) {
            throw new ImpossibleDesignException(
                    "/support/leveler",
                    "The nut of " + leveler.name() + " is " + design.unit().length(widest())
                            + " wide, too wide for its block of "
                            + design.unit().length(room) + ".",
                    List.of("Use a leveler whose nut is bored " + Exact.length(design.unit(), room)
                            + " or less, its flange " + Exact.length(design.unit(), room - PLAY) + " or less."));
        }
    }

    private List<Fixing> nuts(Frame frame) {
        var nuts = new ArrayList<Fixing>();
        for (double y : new double[] {FROM_END, frame.depth() - FROM_END}) {
            for (double x : new double[] {WIDTH / 2, frame.width() - WIDTH / 2}) {
                nuts.add(new Fixing(
                        x,
                        y,
                        leveler.nutBore(),
                        leveler.nutFlange() + PLAY,
                        RECESS_DEPTH,
                        "leveler",
                        "recess for nut flange"));
            }
        }
        return nuts;
    }

    private Block block(Fixing nut, Frame frame) {
        double r = leveler.base() / 2;
        var side = nut.x() < frame.width() / 2 ? "left" : "right";
        return new Block(
                side + " leveler at " + Math.round(nut.y()) + " mm",
                Block.Kind.LEVELER,
                new Box3(
                        new Vec3(nut.x() - r, nut.y() - r, 0),
                        new Vec3(nut.x() + r, nut.y() + r, leveler.height().usual())));
    }
}
