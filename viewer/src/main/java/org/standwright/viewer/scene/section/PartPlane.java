package org.standwright.viewer.scene.section;

import java.util.List;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * A section plane in the frame of one part: a point is kept where {@code sign} times its coordinate is less than {@code
 * at}.
 *
 * @param axis 0 for x, 1 for y, 2 for z of the part
 * @param sign 1 or -1: towards what is cut away
 * @param at in the direction of the sign, a whole number of 1/1024 mm
 * @param shift from there to where solids are cut, half a unit of the grid, so that no corner lies in the cut
 */
record PartPlane(int axis, int sign, double at, double shift) {
    private static final double HALF_UNIT = 0.5 / Solid.PER_MM;

    /**
     * The same plane seen from a part. The cut is the same from both sides, half a unit before the plane, so that both
     * halves together are the whole.
     */
    static PartPlane of(SectionPlane plane, Placement placement) {
        int kept = plane.kept() == SectionPlane.Kept.LOWER ? 1 : -1;
        double from = plane.onGrid() - plane.across().of(placement.origin());
        var axes = List.of(placement.along(), placement.across(), placement.through());
        for (int i = 0; i < 3; i++) {
            int sign = kept * along(axes.get(i), plane.across());
            if (sign != 0) {
                return new PartPlane(i, sign, kept * from + 0.0, -kept * HALF_UNIT);
            }
        }
        throw new IllegalArgumentException("placement " + placement + " has no axis along " + plane.across() + ".");
    }

    private static int along(Axis axis, SectionPlane.Across across) {
        return (int) across.of(axis.unit());
    }

    /** How far a point lies beyond the plane itself, below 0 for what is kept, mm. */
    double beyond(Vec3 point) {
        return sign * component(point, axis) - at;
    }

    /** A point's coordinates in the plane, counter-clockwise seen from what is cut away. */
    double u(Vec3 point) {
        return component(point, (axis + (sign > 0 ? 1 : 2)) % 3);
    }

    double v(Vec3 point) {
        return component(point, (axis + (sign > 0 ? 2 : 1)) % 3);
    }

    /** The coordinate of all points of the cut. */
    double cut() {
        return sign * (at + shift);
    }

    static double component(Vec3 point, int axis) {
        return axis == 0 ? point.x() : axis == 1 ? point.y() : point.z();
    }
}
