package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/** Four levelers in drive-in nuts, the nuts' flanges let into the tops of block strips and held down by the bottom. */
public record LevelerSupport(Leveler leveler, BlockStrips strips) implements SupportPlan {
    private static final double WIDTH = 80;
    /** Leveler's centre from the front and rear edges, mm. */
    private static final double FROM_END = 50;
    /** Play of the flange in its recess, mm. */
    private static final double PLAY = 1;

    private static final double RECESS_DEPTH = 2.5;

    @Override
    public List<Term> terms() {
        var range = leveler.height();
        return List.of(
                new Term("levelers", range.usual(), range.usual() - range.least(), range.most() - range.usual()),
                strips.term());
    }

    @Override
    public Group group(Frame frame) {
        var lower = new ArrayList<Hole>();
        var upper = new ArrayList<Hole>();
        var blocks = new ArrayList<Block>();
        for (double x : new double[] {FROM_END, frame.depth() - FROM_END}) {
            lower.add(Hole.through(x, WIDTH / 2, leveler.nutBore(), "leveler"));
            upper.add(Hole.through(x, WIDTH / 2, leveler.nutBore(), "leveler"));
            upper.add(Hole.blind(
                    Face.SHOW, x, WIDTH / 2, leveler.nutFlange() + PLAY, RECESS_DEPTH, "recess for nut flange"));
            blocks.add(leveler("left", WIDTH / 2, x));
            blocks.add(leveler("right", frame.width() - WIDTH / 2, x));
        }
        return Group.fixed("support", strips.parts(frame, WIDTH, lower, upper), blocks);
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        return List.of(
                new Hardware(leveler.name(), 4, "levelers"),
                new Hardware("drive-in nut for " + leveler.name(), 4, "levelers"));
    }

    @Override
    public List<Hole> bottomHoles(Frame frame) {
        return strips.bottomHoles(frame, WIDTH, FROM_END + leveler.nutFlange());
    }

    private Block leveler(String side, double x, double y) {
        double r = leveler.base() / 2;
        return new Block(
                side + " leveler at " + Math.round(y) + " mm",
                Block.Kind.LEVELER,
                new Box3(
                        new Vec3(x - r, y - r, 0),
                        new Vec3(x + r, y + r, leveler.height().usual())));
    }

    @Override
    public Size2 leastPlan() {
        double width = Math.max(WIDTH, leveler.base());
        return new Size2(2 * width, 2 * FROM_END + Math.max(leveler.base(), leveler.nutFlange()));
    }

    @Override
    public void check(StandDesign design) {
        strips.check(RECESS_DEPTH);
        double widest = Math.max(leveler.nutFlange() + PLAY, leveler.nutBore());
        if (Grid.less(Math.min(WIDTH, 2 * FROM_END), widest)) {
            throw new ImpossibleDesignException(
                    "/support/leveler",
                    "The nut of " + leveler.name() + " is " + design.unit().length(widest)
                            + " wide, too wide for its block of "
                            + design.unit().length(WIDTH) + ".",
                    List.of("Use a leveler with a smaller nut."));
        }
    }
}
