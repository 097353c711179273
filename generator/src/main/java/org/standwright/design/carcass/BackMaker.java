package org.standwright.design.carcass;

import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/** The back, whole or in two pieces that meet on a partition's middle; both are held as a whole one is. */
final class BackMaker {
    private final Frame frame;

    BackMaker(Frame frame) {
        this.frame = frame;
    }

    /** From left to right. */
    List<PlacedPart> pieces() {
        double left = frame.isButted() ? 0 : frame.panel() - frame.housing();
        double right = frame.width() - left;
        if (frame.design().carcass().backPieces() == 1) {
            return List.of(piece("back", left, right));
        }
        double joint = joint();
        return List.of(piece("back left", left, joint), piece("back right", joint, right));
    }

    /** Middle of the partition that is nearest to the middle of the carcass. */
    private double joint() {
        double half = frame.panel() / 2;
        return half
                + frame.partitions().stream()
                        .min(Comparator.comparingDouble(x -> Math.abs(x + half - frame.width() / 2)))
                        .orElseThrow();
    }

    /** Grain along its longer side. */
    private PlacedPart piece(String label, double left, double right) {
        var material = frame.design().carcass().back().material();
        double width = right - left;
        double y = frame.insideDepth();
        if (frame.height() >= width) {
            return new PlacedPart(
                    label,
                    Part.blank("back", material, frame.height(), width),
                    new Placement(Axis.Z_PLUS, Axis.X_PLUS, new Vec3(left, y, frame.floorToCarcass())));
        }
        return new PlacedPart(
                label,
                Part.blank("back", material, width, frame.height()),
                new Placement(Axis.X_MINUS, Axis.Z_PLUS, new Vec3(right, y, frame.floorToCarcass())));
    }
}
