package org.standwright.design.wall.built;

import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * Where a wall stands in the assembly. Its own frame: x to the right along its surface, y into the wall, z up from the
 * floor, so that all that hangs on it has y below 0.
 *
 * @param origin its lower left corner
 * @param right where its x axis points, level
 */
public record WallFrame(Vec3 origin, Axis right) {
    /** A point of the wall in assembly coordinates. */
    public Vec3 apply(Vec3 point) {
        return origin.plus(right.unit().times(point.x()))
                .plus(turned(Axis.Y_PLUS).unit().times(point.y()))
                .plus(new Vec3(0, 0, point.z()));
    }

    /** A point of the assembly in the wall's frame: {@link #apply(Vec3)} the other way round. */
    public Vec3 local(Vec3 point) {
        var from = point.minus(origin);
        return new Vec3(dot(from, right.unit()), dot(from, turned(Axis.Y_PLUS).unit()), from.z());
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    /** A box of the wall in assembly coordinates. */
    public Box3 apply(Box3 box) {
        return Box3.between(apply(box.min()), apply(box.max()));
    }

    /** A placement in the wall's frame as one in the assembly. */
    public Placement apply(Placement placement) {
        return new Placement(turned(placement.along()), turned(placement.across()), apply(placement.origin()));
    }

    private Axis turned(Axis axis) {
        var into = Axis.Z_PLUS.cross(right);
        return switch (axis) {
            case X_PLUS -> right;
            case X_MINUS -> right.opposite();
            case Y_PLUS -> into;
            case Y_MINUS -> into.opposite();
            case Z_PLUS, Z_MINUS -> axis;
        };
    }
}
