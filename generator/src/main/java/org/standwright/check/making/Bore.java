package org.standwright.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.EdgeHole;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Removed;

/**
 * A round hole in a part as a cylinder along one of its axes.
 *
 * @param box around it, in the part's frame
 * @param axis 0, 1 or 2 for x, y or z
 * @param through whether it goes through the part's thickness
 */
record Bore(String purpose, Box3 box, int axis, boolean through) {
    static List<Bore> of(Part part) {
        var bores = new ArrayList<Bore>();
        var removed = new Removed(part);
        for (Feature feature : part.features()) {
            if (feature instanceof Hole hole) {
                var plain = new Hole(
                        hole.face(),
                        hole.x(),
                        hole.y(),
                        hole.diameter(),
                        hole.depth(),
                        Optional.empty(),
                        hole.purpose());
                bores.add(new Bore(
                        hole.purpose(), removed.hole(plain), 2, hole.depth().isEmpty()));
            } else if (feature instanceof EdgeHole hole) {
                bores.add(new Bore(
                        hole.purpose(), removed.edgeHole(hole), hole.edge().isEnd() ? 0 : 1, false));
            }
        }
        return bores;
    }

    /** Whether it is bored square to a face. */
    boolean isInFace() {
        return axis == 2;
    }

    /** Whether one widens the other on the same axis, as a recess does: both begin at one face, or one goes through. */
    boolean widens(Bore other) {
        return axis == other.axis
                && Grid.same(between(other), 0)
                && (through
                        || other.through
                        || Grid.same(on(box.min(), axis), on(other.box.min(), axis))
                        || Grid.same(on(box.max(), axis), on(other.box.max(), axis)));
    }

    /** Wood between the two, mm; 0 or less where they meet. Around the ends it takes bores as square. */
    double wood(Bore other) {
        if (axis == other.axis) {
            return apart(between(other) - radius() - other.radius(), gap(other, axis));
        }
        int third = 3 - axis - other.axis;
        return apart(gap(other, third), apart(gap(other, axis), gap(other, other.axis)));
    }

    /** Between two axes that run the same way, mm. */
    private double between(Bore other) {
        int one = (axis + 1) % 3;
        int two = (axis + 2) % 3;
        return StrictMath.hypot(middle(one) - other.middle(one), middle(two) - other.middle(two));
    }

    private double radius() {
        int across = (axis + 1) % 3;
        return (on(box.max(), across) - on(box.min(), across)) / 2;
    }

    private double middle(int along) {
        return (on(box.min(), along) + on(box.max(), along)) / 2;
    }

    private double gap(Bore other, int along) {
        return Math.max(
                on(box.min(), along) - on(other.box.max(), along), on(other.box.min(), along) - on(box.max(), along));
    }

    /** Of two distances square to each other, less than 0 for an overlap. */
    private static double apart(double one, double other) {
        return one > 0 && other > 0 ? StrictMath.hypot(one, other) : Math.max(one, other);
    }

    private static double on(Vec3 point, int along) {
        return along == 0 ? point.x() : along == 1 ? point.y() : point.z();
    }
}
