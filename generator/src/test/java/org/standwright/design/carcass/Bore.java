package org.standwright.design.carcass;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/**
 * A round bore of a part where it lies in the assembly, worked out from the names of its placement's axes: the box around
 * it, and the direction that the drill goes.
 *
 * @param mouth centre of its mouth: x, y, z, mm
 * @param way index of the axis that it runs along
 * @param forward whether the drill goes up that axis
 */
record Bore(
        String part, boolean inEdge, String purpose, double[] mouth, int way, boolean forward, double r, double deep) {
    /** All bores of a stand's carcass. */
    static List<Bore> of(Stand stand) {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals("carcass"))
                .flatMap(group -> group.parts().stream())
                .flatMap(part -> part.part().features().stream().flatMap(feature -> of(part, feature)))
                .toList();
    }

    private static Stream<Bore> of(PlacedPart placed, Feature feature) {
        var along = placed.placement().along().name();
        var across = placed.placement().across().name();
        var through = placed.placement().through().name();
        double thick = placed.part().thickness();
        if (feature instanceof Hole hole) {
            boolean bench = hole.face() == Face.BENCH;
            var mouth = at(placed, hole.x(), hole.y(), bench ? 0 : thick);
            return Stream.of(
                    bore(placed, false, hole.purpose(), mouth, through, bench, hole.diameter(), hole.depthIn(thick)));
        }
        if (feature instanceof EdgeHole hole) {
            boolean near = !hole.edge().isFar();
            double far = near
                    ? 0
                    : hole.edge().isEnd()
                            ? placed.part().length()
                            : placed.part().width();
            boolean end = hole.edge().isEnd();
            var mouth = end ? at(placed, far, hole.along(), hole.z()) : at(placed, hole.along(), far, hole.z());
            return Stream.of(bore(
                    placed, true, hole.purpose(), mouth, end ? along : across, near, hole.diameter(), hole.depth()));
        }
        return Stream.empty();
    }

    private static Bore bore(
            PlacedPart placed,
            boolean inEdge,
            String purpose,
            double[] mouth,
            String axis,
            boolean up,
            double diameter,
            double deep) {
        boolean forward = axis.endsWith("PLUS") == up;
        return new Bore(placed.label(), inEdge, purpose, mouth, axis.charAt(0) - 'X', forward, diameter / 2, deep);
    }

    private static double[] at(PlacedPart placed, double x, double y, double z) {
        var origin = placed.placement().origin();
        double[] point = {origin.x(), origin.y(), origin.z()};
        go(point, placed.placement().along().name(), x);
        go(point, placed.placement().across().name(), y);
        go(point, placed.placement().through().name(), z);
        return point;
    }

    private static void go(double[] point, String axis, double distance) {
        point[axis.charAt(0) - 'X'] += axis.endsWith("PLUS") ? distance : -distance;
    }

    boolean isOfJoint() {
        return List.of("joint screw", "joint screw pilot", "dowel", "connector", "connector head")
                .contains(purpose);
    }

    double y() {
        return mouth[1];
    }

    /** The lower of its two ends along its own axis. */
    double low() {
        return forward ? mouth[way] : mouth[way] - deep;
    }

    double high() {
        return low() + deep;
    }

    /** Whether both run along one line. */
    boolean isInLineWith(Bore other) {
        for (int axis = 0; axis < 3; axis++) {
            if (axis != way && Math.abs(mouth[axis] - other.mouth[axis]) > 1e-6) {
                return false;
            }
        }
        return way == other.way;
    }

    /** Whether one ends where the other begins, or overlaps it. */
    boolean meets(Bore other) {
        return isInLineWith(other) && low() < other.high() + 1e-6 && other.low() < high() + 1e-6;
    }

    /** Wood between the boxes around two bores: the widest of the gaps along the three axes. */
    double apart(Bore other) {
        double widest = Double.NEGATIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double gap = Math.max(from(axis) - other.to(axis), other.from(axis) - to(axis));
            widest = Math.max(widest, gap);
        }
        return widest;
    }

    private double from(int axis) {
        return axis == way ? low() : mouth[axis] - r;
    }

    private double to(int axis) {
        return axis == way ? high() : mouth[axis] + r;
    }
}
