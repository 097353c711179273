package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Hardware;
import org.standwright.design.frame.BoltSize;
import org.standwright.design.kit.Caster;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** What one caster takes up in the wood above its plate and around it on the floor, mm. */
record CasterSeat(Caster caster) {
    /** Wood around the plate on each side at least. */
    private static final double MARGIN = 10;
    /** Wood left beside a recess. */
    private static final double BESIDE_RECESS = 2;
    /** Height of a hexagon head over its bolt's diameter: 5.3 for 8 mm (ISO 4017), rounded up. */
    private static final double HEAD = 0.7;
    /** Washer and play in a recess. */
    private static final double WASHER_AND_PLAY = 3.4;
    /** Plate, washer and thread end below the wood; the lock nut is as high as its bolt is thick (ISO 7040). */
    private static final double BELOW_WOOD = 10;
    /** Bolts of one caster. */
    private static final int BOLTS = 4;

    double recessDepth() {
        return HEAD * caster.bolt() + WASHER_AND_PLAY;
    }

    /** Width of wood that it takes along the side of the plan. */
    double strip() {
        return caster.plate().width()
                + 2 * margin(caster.plate().width() - caster.holes().width());
    }

    /** Centre of its plate from the front or rear edge of the plan. */
    double fromEnd() {
        double plate = caster.plate().depth();
        return margin(plate - caster.holes().depth()) + plate / 2;
    }

    /** How far from its centre its recesses go towards the front or rear. */
    double recessesAlong() {
        return (caster.holes().depth() + recess()) / 2;
    }

    /** How far from its centre wheel, plate and recesses go towards the front or rear. */
    double reachAlong() {
        return Math.max(Math.max(wheel(), caster.plate().depth() / 2), recessesAlong());
    }

    /** How far from its centre wheel, plate and recesses go to the sides. */
    double reachAcross() {
        double recesses = (caster.holes().width() + recess()) / 2;
        return Math.max(Math.max(wheel(), caster.plate().width() / 2), recesses);
    }

    /** Its four bolts with its plate's centre at a place of the assembly. */
    List<Fixing> bolts(double x, double y) {
        var bolts = new ArrayList<Fixing>();
        double halfX = caster.holes().width() / 2;
        double halfY = caster.holes().depth() / 2;
        for (double dy : new double[] {-halfY, halfY}) {
            for (double dx : new double[] {-halfX, halfX}) {
                bolts.add(new Fixing(
                        x + dx,
                        y + dy,
                        caster.holeDiameter(),
                        recess(),
                        recessDepth(),
                        "caster bolt",
                        "recess for head and washer"));
            }
        }
        return bolts;
    }

    Block block(String label, double x, double y) {
        double halfX = caster.plate().width() / 2;
        double halfY = caster.plate().depth() / 2;
        return new Block(
                label,
                Block.Kind.CASTER,
                new Box3(new Vec3(x - halfX, y - halfY, 0), new Vec3(x + halfX, y + halfY, caster.height())));
    }

    /**
     * So many of it with what bolts them on.
     *
     * @param wood thickness of the layers they are bolted to
     */
    List<Hardware> hardware(int count, double wood) {
        var bolt = new BoltSize(caster.bolt());
        double grip = wood - recessDepth() + BELOW_WOOD + caster.bolt();
        int bolts = BOLTS * count;
        return List.of(
                new Hardware(caster.name() + (caster.brake() ? ", with brake" : ""), count, "casters"),
                new Hardware("hexagon bolt " + bolt.ofLength(grip), bolts, "casters"),
                new Hardware(
                        "washer " + bolt + ", " + Math.round(washer()) + " mm wide", bolts, "casters, under the heads"),
                new Hardware("washer " + bolt, bolts, "casters, under the nuts"),
                new Hardware("lock nut " + bolt, bolts, "casters"));
    }

    /** How far its wheel reaches; that of a fixed one is lower than the caster, and its axle below the plate's centre. */
    private double wheel() {
        return caster.swivelRadius() > 0 ? caster.swivelRadius() : caster.height() / 2;
    }

    private double washer() {
        return new BoltSize(caster.bolt()).washer();
    }

    private double recess() {
        return washer() + 1;
    }

    /** Enough wood beside a plate that its bolts' recesses stay within it. */
    private double margin(double plateLessHoles) {
        return Math.max(MARGIN, recess() / 2 + BESIDE_RECESS - plateLessHoles / 2);
    }
}
