package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.BoltSize;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/**
 * Four casters under block strips. The bolts come down through the blocks, their heads on washers in recesses that the
 * bottom panel covers, so that nothing of them stands in a drawer's way and the nuts are reached from below.
 */
public record CasterSupport(Caster caster, BlockStrips strips) implements SupportPlan {
    /** Wood around the plate on each side at least, mm. */
    private static final double MARGIN = 10;
    /** Wood left beside a recess, mm. */
    private static final double BESIDE_RECESS = 2;
    /** Washers on plywood are at least 25 mm wide (shop practice) and three times their bolt (ISO 7093-1), mm. */
    private static final double WASHER = 25;
    /** Height of a hexagon head over its bolt's diameter: 5.3 for 8 mm (ISO 4017), rounded up. */
    private static final double HEAD = 0.7;
    /** Washer and play in a recess, mm. */
    private static final double WASHER_AND_PLAY = 3.4;
    /** Plate, washer, nut and thread end below the wood, mm; common practice, no source. */
    private static final double BELOW_WOOD = 18;

    @Override
    public List<Term> terms() {
        return List.of(Term.fixed("casters", caster.height()), strips.term());
    }

    @Override
    public Group group(Frame frame) {
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
                    upper.add(Hole.blind(Face.SHOW, x + dx, y, recess(), recessDepth(), "recess for head and washer"));
                }
            }
            blocks.add(caster("left", width() / 2, x));
            blocks.add(caster("right", frame.width() - width() / 2, x));
        }
        return Group.fixed("support", strips.parts(frame, width(), lower, upper), blocks);
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        var bolt = new BoltSize(caster.bolt());
        double grip = strips.height() + BELOW_WOOD - recessDepth();
        return List.of(
                new Hardware(caster.name() + (caster.brake() ? ", with brake" : ""), 4, "casters"),
                new Hardware("hexagon bolt " + bolt.ofLength(grip), 16, "casters"),
                new Hardware(
                        "washer " + bolt + ", " + Math.round(washer()) + " mm or wider",
                        16,
                        "casters, under the heads"),
                new Hardware("washer " + bolt, 16, "casters, under the nuts"),
                new Hardware("lock nut " + bolt, 16, "casters"));
    }

    @Override
    public List<Hole> bottomHoles(Frame frame) {
        return strips.bottomHoles(
                frame, width(), 2 * marginAlong() + caster.plate().depth());
    }

    /** Strips side by side within the plan, and wheels that can swing past each other. */
    @Override
    public Size2 leastPlan() {
        double between = Math.max(2 * caster.swivelRadius(), caster.plate().depth());
        return new Size2(
                Math.max(2 * width(), between + width()),
                between + 2 * marginAlong() + caster.plate().depth());
    }

    /** A hole pattern that is on the plate, bolts that go through it, and recesses that leave wood below them. */
    @Override
    public void check(StandDesign design) {
        var units = design.unit();
        var holes = caster.holes();
        var plate = caster.plate();
        if (Grid.less(plate.width(), holes.width() + caster.holeDiameter())
                || Grid.less(plate.depth(), holes.depth() + caster.holeDiameter())) {
            throw new ImpossibleDesignException(
                    "/support/caster",
                    "The bolt holes of " + caster.name() + " reach over its plate of " + units.length(plate.width())
                            + " x " + units.length(plate.depth()) + ".",
                    List.of("Measure the plate and the distances between the holes' centres again."));
        }
        if (Grid.less(caster.holeDiameter(), caster.bolt())) {
            throw new ImpossibleDesignException(
                    "/support/caster",
                    "A bolt of " + units.length(caster.bolt()) + " does not go through the holes of "
                            + units.length(caster.holeDiameter()) + " in " + caster.name() + ".",
                    List.of("Use a thinner bolt."));
        }
        strips.check(recessDepth());
    }

    private double washer() {
        return Math.max(WASHER, 3 * caster.bolt());
    }

    private double recess() {
        return washer() + 1;
    }

    private double recessDepth() {
        return HEAD * caster.bolt() + WASHER_AND_PLAY;
    }

    private double marginAlong() {
        return margin(caster.plate().depth() - caster.holes().depth());
    }

    /** Enough wood beside a plate that its bolts' recesses stay within the strip. */
    private double margin(double plateLessHoles) {
        return Math.max(MARGIN, recess() / 2 + BESIDE_RECESS - plateLessHoles / 2);
    }

    /** Width of a strip. */
    private double width() {
        return caster.plate().width()
                + 2 * margin(caster.plate().width() - caster.holes().width());
    }

    /** Distances of the plates' centres from the front edge. */
    private double[] plateCentres(Frame frame) {
        double fromEnd = marginAlong() + caster.plate().depth() / 2;
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
}
