package org.standwright.assembly;

import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/**
 * Where a part stands in the assembly: a turn by right angles, then a shift. The part's z axis follows from the other
 * two (right-handed), so a placement never mirrors.
 *
 * @param along where the part's x axis (its grain) points
 * @param across where the part's y axis points, square to {@code along}
 * @param origin where the part's origin lies
 */
public record Placement(Axis along, Axis across, Vec3 origin) {
    public Placement {
        along.cross(across); // refuses axes that are not square
    }

    /** A point of the part in assembly coordinates. */
    public Vec3 apply(Vec3 point) {
        return origin.plus(along.unit().times(point.x()))
                .plus(across.unit().times(point.y()))
                .plus(through().unit().times(point.z()));
    }

    /** The same, shifted. */
    public Placement moved(Vec3 by) {
        return new Placement(along, across, origin.plus(by));
    }

    /** The part's own coordinates of a point in assembly coordinates: {@link #apply} the other way round. */
    public Vec3 local(Vec3 point) {
        var from = point.minus(origin);
        return new Vec3(along(from, along), along(from, across), along(from, through()));
    }

    private static double along(Vec3 from, Axis axis) {
        var unit = axis.unit();
        return from.x() * unit.x() + from.y() * unit.y() + from.z() * unit.z();
    }

    /** Where the part's z axis points: from its bench face to its show face. */
    public Axis through() {
        return along.cross(across);
    }

    /** The box that the part's blank fills in the assembly. */
    public Box3 box(Part part) {
        return Box3.between(apply(Vec3.ZERO), apply(new Vec3(part.length(), part.width(), part.thickness())));
    }
}
