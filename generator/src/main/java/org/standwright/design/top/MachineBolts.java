package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.frame.BoltSize;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Range;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/**
 * The bolts that hold the machine: down through its flange, the shims, the worktop and the sub-top, with a washer and a
 * lock nut below. Lengths in mm.
 */
public final class MachineBolts {
    /** How much wider than its bolt a hole in wood is; common practice, no source. */
    private static final double CLEARANCE = 1;

    private static final double WASHER_THICKNESS = 2;
    /** Height of a nut over its bolt's diameter; common practice, no source. */
    private static final double NUT_HEIGHT = 0.8;
    /** Width of a nut across its corners over its bolt's diameter: 14.4 for 8 mm (ISO 4032). */
    private static final double NUT_WIDTH = 1.8;
    /** Thread that shows below the nut at least; common practice, no source. */
    private static final double END = 3;
    /** Around a washer, so that a spanner turns the nut (shop practice). */
    private static final double AROUND_WASHER = 5;

    /** Between the bolts' ends and a drawer box; common practice, no source. */
    private static final double ABOVE_BOX = 3;

    private final Frame frame;
    private final Optional<Mounting> mounting;
    private final List<Point2> places;

    public MachineBolts(Frame frame) {
        this.frame = frame;
        this.mounting = frame.design().machine().mounting();
        this.places = new MachinePlace(frame).layout().map(MachineLayout::bolts).orElse(List.of());
    }

    /**
     * How deep bolts, with washers and nuts, hang below the sub-top between two lines.
     *
     * @param x0 left line, in the assembly
     * @param x1 right line, in the assembly
     * @return 0 where none hangs
     */
    public double belowSubTop(double x0, double x1) {
        return places.stream().anyMatch(bolt -> bolt.x() + washer() / 2 > x0 && bolt.x() - washer() / 2 < x1)
                ? reach()
                : 0;
    }

    /**
     * How much lower than it would be otherwise a drawer box must be to stay clear of the bolts' ends.
     *
     * @param x0 left line of its opening, in the assembly
     * @param x1 right line of its opening, in the assembly
     * @param top of the box, were there no bolts, above the floor
     * @return 0 where no bolt hangs so low
     */
    public double takeFrom(double x0, double x1, double top) {
        double ends = frame.openingTop() - belowSubTop(x0, x1);
        return ends < frame.openingTop() ? Math.max(0, top - (ends - ABOVE_BOX)) : 0;
    }

    /**
     * The refusal of a drawer box that would be too low under the bolts' ends.
     *
     * @param field JSON pointer of the contents that it belongs to
     * @param front height of its front, mm
     * @param missing how much too low the box is, mm
     */
    public ImpossibleDesignException tooLow(String field, String drawer, double front, double missing) {
        var units = frame.design().unit();
        return new ImpossibleDesignException(
                field,
                "Machine bolts reach " + units.length(reach()) + " below the sub-top, over drawer " + drawer
                        + ", whose box would be " + units.length(missing) + " too low.",
                List.of(
                        "Make this front " + Exact.up(units, front + missing) + " high or more.",
                        "Or put open space above it."));
    }

    /** Centres, in the order of the machine's holes. */
    List<Point2> places() {
        return places;
    }

    double bolt() {
        return mounting.map(Mounting::bolt).orElse(0.0);
    }

    /** Diameter of the washers under the sub-top. */
    double washer() {
        return new BoltSize(bolt()).washer();
    }

    List<Opening> openings() {
        return places.stream()
                .map(bolt -> Opening.round(Seen.FROM_ABOVE, bolt.x(), bolt.y(), hole(), "machine bolt"))
                .toList();
    }

    /** Diameter of the holes in the wood. */
    double hole() {
        return bolt() + CLEARANCE;
    }

    /** What each washer takes, with room for a spanner. */
    List<Rect> rooms() {
        return places.stream()
                .map(bolt -> Taken.around(bolt.x(), bolt.y(), washer() / 2 + AROUND_WASHER))
                .toList();
    }

    /** What each washer takes. */
    List<Taken> taken() {
        var taken = new ArrayList<Taken>();
        for (var bolt : places) {
            taken.add(new Taken(
                    "machine bolt " + (taken.size() + 1) + " with its washer",
                    Taken.around(bolt.x(), bolt.y(), washer() / 2)));
        }
        return taken;
    }

    /** Washer, nut and thread below the sub-top. */
    List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        double washer = frame.openingTop() - WASHER_THICKNESS;
        double nut = washer - NUT_HEIGHT * bolt();
        for (int i = 0; i < places.size(); i++) {
            var bolt = places.get(i);
            var label = "machine bolt " + (i + 1);
            blocks.add(block(label + " washer", bolt, washer(), washer, frame.openingTop()));
            blocks.add(block(label + " lock nut", bolt, NUT_WIDTH * bolt(), nut, washer));
            blocks.add(block(label + " end", bolt, bolt(), frame.openingTop() - reach(), nut));
        }
        return blocks;
    }

    List<Hardware> hardware() {
        if (places.isEmpty()) {
            return List.of();
        }
        var size = new BoltSize(bolt());
        int count = places.size();
        return List.of(
                new Hardware(
                        "hexagon bolt " + size.ofLength(needed()), count, "machine, down through worktop and sub-top"),
                new Hardware("washer " + size, count, "machine, under the bolts' heads"),
                new Hardware(
                        "washer " + size + ", " + Math.round(washer()) + " mm or wider",
                        count,
                        "machine, under the sub-top"),
                new Hardware("lock nut " + size, count, "machine; re-tighten after the first hours of use"));
    }

    /** The least length that reaches through with the shims at their most: the flange is measured under the heads. */
    private double needed() {
        return wood() + shims().map(Range::most).orElse(0.0) + WASHER_THICKNESS + NUT_HEIGHT * bolt() + END;
    }

    /** From the underside of the sub-top to the bolts' ends, with the shims at their least. */
    private double reach() {
        return new BoltSize(bolt()).soldLength(needed())
                - wood()
                - shims().map(Range::least).orElse(0.0);
    }

    private double wood() {
        return mounting.map(Mounting::flange).orElse(0.0) + WorktopSize.thickness(frame) + frame.panel();
    }

    private Optional<Range> shims() {
        return frame.design().place().shims();
    }

    private static Block block(String label, Point2 at, double width, double z0, double z1) {
        return new Block(
                label,
                Block.Kind.BOLT,
                new Box3(
                        new Vec3(at.x() - width / 2, at.y() - width / 2, z0),
                        new Vec3(at.x() + width / 2, at.y() + width / 2, z1)));
    }
}
