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
        if (dot(along.unit(), across.unit()) != 0) {
            throw new IllegalArgumentException("axes " + along + " and " + across + " of a placement are not square.");
        }
    }

    /** A point of the part in assembly coordinates. */
    public Vec3 apply(Vec3 point) {
        return origin.plus(along.unit().times(point.x()))
                .plus(across.unit().times(point.y()))
                .plus(through().times(point.z()));
    }

    /** Where the part's z axis points: from its bench face to its show face. */
    public Vec3 through() {
        return cross(along.unit(), across.unit());
    }

    /** The box that the part's blank fills in the assembly. */
    public Box3 box(Part part) {
        return Box3.between(apply(Vec3.ZERO), apply(new Vec3(part.length(), part.width(), part.thickness())));
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
