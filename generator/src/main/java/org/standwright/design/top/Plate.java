package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Hardware;
import org.standwright.design.PlateOpening;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** A plate let in flush: its rabbet, the ledge that it lies on with the screws that level it, and the opening within. */
final class Plate {
    /** A side longer than this has a levelling screw in its middle, mm; common practice, no source. */
    private static final double LONG_SIDE = 200;

    private final Frame frame;
    private final PlateOpening plate;
    private final Rect area;

    Plate(Frame frame, PlateOpening plate) {
        this.frame = frame;
        this.plate = plate;
        var top = WorktopSize.outline(frame);
        double x = top.x0() + plate.x();
        double y = top.y0() + plate.y();
        this.area =
                new Rect(x - plate.width() / 2, y - plate.depth() / 2, x + plate.width() / 2, y + plate.depth() / 2);
    }

    PlateOpening plate() {
        return plate;
    }

    /** Outline of the plate, seen from above. */
    Rect area() {
        return area;
    }

    /** Outline of the rabbet: the plate and its fit. */
    Rect rabbet() {
        return Taken.grown(area, plate.fit() / 2);
    }

    /** The opening within the ledge, its corners as round as the plate's where it is wide enough. */
    Opening opening() {
        var within = Taken.grown(area, -plate.ledge());
        double radius = Math.min(plate.radius(), Math.min(within.width(), within.height()) / 2);
        return Opening.rectangular(Seen.FROM_ABOVE, within, radius, "opening under " + plate.name());
    }

    /** Levelling screws: one at each corner, one in the middle of each long side; on the middle of the ledge. */
    List<Point2> screws() {
        var screws = new ArrayList<Point2>();
        double corner = corner();
        for (double x : new double[] {area.x0() + corner, area.x1() - corner}) {
            for (double y : new double[] {area.y0() + corner, area.y1() - corner}) {
                screws.add(new Point2(x, y));
            }
        }
        double middle = plate.ledge() / 2;
        if (plate.width() > LONG_SIDE) {
            screws.add(new Point2((area.x0() + area.x1()) / 2, area.y0() + middle));
            screws.add(new Point2((area.x0() + area.x1()) / 2, area.y1() - middle));
        }
        if (plate.depth() > LONG_SIDE) {
            screws.add(new Point2(area.x0() + middle, (area.y0() + area.y1()) / 2));
            screws.add(new Point2(area.x1() - middle, (area.y0() + area.y1()) / 2));
        }
        return screws;
    }

    /** Along both sides from a corner of the plate to its screw: half a ledge within a round corner too. */
    private double corner() {
        double half = plate.ledge() / 2;
        double radius = plate.radius();
        return radius > half ? radius - (radius - half) * StrictMath.sqrt(0.5) : half;
    }

    Block block() {
        double top = WorktopSize.top(frame);
        return new Block(
                plate.name(),
                Block.Kind.PLATE,
                new Box3(new Vec3(area.x0(), area.y0(), top - plate.thickness()), new Vec3(area.x1(), area.y1(), top)));
    }

    List<Hardware> hardware() {
        return List.of(
                new Hardware(plate.name(), 1, "let into the worktop"),
                new Hardware("levelling screw for " + plate.name(), screws().size(), "in the ledge under the plate"));
    }
}
