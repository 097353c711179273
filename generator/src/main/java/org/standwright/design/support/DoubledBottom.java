package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * Two full layers over the whole plan below the carcass's bottom. In a layer's own frame x and y are those of the
 * assembly.
 *
 * @param leastWidth of the plan, mm
 */
record DoubledBottom(Layers layers, double leastWidth) implements SupportBed {
    /** Between two screws at most, mm; common practice, no source. */
    private static final double SPACING = 200;
    /** From the edge of an opening to the centre of a screw, mm. */
    private static final double FROM_EDGE = 40;
    /** From a recess to the centre of a screw, mm. */
    private static final double BESIDE_RECESS = 10;

    @Override
    public List<PlacedPart> parts(Frame frame, List<Fixing> fixings) {
        return List.of(
                layer("base lower layer", fixings, false, frame), layer("base upper layer", fixings, true, frame));
    }

    /** A grid in every opening that stands on the bottom, with no screw in a recess. */
    @Override
    public List<Hole> bottomHoles(Frame frame, List<Fixing> fixings) {
        var holes = new ArrayList<Hole>();
        for (var floor : frame.floors()) {
            for (double x : places(floor.x0(), floor.x1(), 1)) {
                // a row in the middle, where no caster is
                for (double y : places(0, frame.insideDepth(), 2)) {
                    if (fixings.stream().allMatch(fixing -> clears(fixing, x, y))) {
                        holes.add(layers.screwHole(x, y));
                    }
                }
            }
        }
        return holes;
    }

    private static boolean clears(Fixing fixing, double x, double y) {
        return StrictMath.hypot(fixing.x() - x, fixing.y() - y) >= fixing.reach() + BESIDE_RECESS;
    }

    /** Evenly from edge to edge, in the middle where there is no room for two. */
    private static List<Double> places(double from, double to, int leastSteps) {
        double length = to - from - 2 * FROM_EDGE;
        if (length <= 0) {
            return List.of((from + to) / 2);
        }
        int steps = Math.max(leastSteps, (int) StrictMath.ceil(length / SPACING));
        var places = new ArrayList<Double>();
        for (int i = 0; i <= steps; i++) {
            places.add(from + FROM_EDGE + i * length / steps);
        }
        return places;
    }

    private PlacedPart layer(String label, List<Fixing> fixings, boolean upper, Frame frame) {
        var wood = layers.wood();
        double z = frame.floorToCarcass() - (upper ? wood.thickness() : layers.height());
        return new PlacedPart(
                label,
                Part.blank(label, wood, frame.width(), frame.depth()).with(layers.bores(fixings, upper)),
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, z)));
    }
}
