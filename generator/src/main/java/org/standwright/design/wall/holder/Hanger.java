package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * The cleat on a holder's back: as long as the back, upside down, its long face to the wall. Screws go through the back
 * from its front into the hanger's short face, their heads sunk in.
 */
record Hanger(HolderFrame frame, double width) {
    /** Screws keep this many diameters from an edge (references 7.3). */
    private static final double FROM_EDGE = 3;

    /** Refuses a short face too narrow for a screw. */
    void check() {
        double least = 2 * FROM_EDGE * frame.screwing().family().diameter();
        var section = frame.section();
        if (Grid.less(section.shortFace(), least)) {
            throw HolderFrame.refusedAt(
                    "/cleat/face",
                    "A hanger's short face is " + frame.length(section.shortFace()) + " wide, but its screws take "
                            + frame.length(least) + ".",
                    "Make the long face " + Exact.up(frame.design().unit(), least + section.rise()) + " or more.");
        }
    }

    PlacedPart placed() {
        var section = frame.section();
        var part = Part.blank("hanger", section.sheet().material(), width, section.height())
                .with(new Bevel(Edge.Y1, Face.BENCH, section.tilt(), section.bevelDepth()))
                .with(screws().stream()
                        .map(x -> Hole.blind(
                                Face.BENCH,
                                x,
                                section.shortFace() / 2,
                                frame.screwing().family().pilot(),
                                length() - frame.board(),
                                "pilot for hanger screw"))
                        .toList());
        return frame.lay().placed("hanger", part, Axis.X_PLUS, Axis.Z_MINUS, new Vec3(0, -frame.cleat(), frame.top()));
    }

    /** Bores in the back, which ends {@code bottom} above the high edge of the strip, mm. */
    List<Hole> inBack(double bottom) {
        double y = frame.top() - frame.section().shortFace() / 2 - bottom;
        return screws().stream()
                .map(x -> frame.screwing().sunk(Face.SHOW, x, y, HolderMaker.HANGER_SCREW))
                .toList();
    }

    /** Length of its screws, mm. */
    double length() {
        return frame.screwing().through(frame.board(), frame.cleat(), "A hanger on its back");
    }

    /** Places along it. */
    List<Double> screws() {
        return frame.screwing().places(width);
    }

    Hardware hardware() {
        return new Hardware(
                frame.screwing().item(length()),
                screws().size(),
                frame.holder().name() + ", through the back into the hanger, glued too");
    }
}
