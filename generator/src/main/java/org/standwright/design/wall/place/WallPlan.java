package org.standwright.design.wall.place;

import java.util.List;
import org.standwright.design.wall.built.WallFrame;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Interval;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/** A wall seen from above, and what belongs to another wall, seen from this one. */
record WallPlan(WallFrame frame, Axis into) {
    static WallPlan of(WallFrame frame) {
        return new WallPlan(frame, Axis.Z_PLUS.cross(frame.right()));
    }

    /** A box in the frame of another wall, as what a holder on this wall must not meet. */
    Obstruction obstruction(String what, Box3 box, WallPlan other) {
        var placed = other.frame.apply(box);
        var here = Box3.between(local(placed.min()), local(placed.max()));
        return new Obstruction(
                what,
                here.min().z(),
                here.max().z(),
                new Footprint.Oblong(
                        new Interval(here.min().x(), here.max().x()),
                        -here.max().y()),
                0);
    }

    /** Corners along and out from another wall, as such before this one. */
    List<Vec2> corners(List<Vec2> corners, WallPlan other) {
        return corners.stream()
                .map(corner -> local(other.frame.apply(new Vec3(corner.x(), -corner.y(), 0))))
                .map(point -> new Vec2(point.x(), -point.y()))
                .toList();
    }

    private Vec3 local(Vec3 point) {
        var from = point.minus(frame.origin());
        return new Vec3(along(from, frame.right()), along(from, into), from.z());
    }

    private static double along(Vec3 from, Axis axis) {
        var unit = axis.unit();
        return from.x() * unit.x() + from.y() * unit.y();
    }
}
