package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.cross;
import static org.standwright.viewer.scene.measure.Products.dot;

import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** One triangle of a face, counter-clockwise seen from outside, mm. */
public record Triangle(Vec3 a, Vec3 b, Vec3 c) {
    static Triangle of(Solid solid, int triangle) {
        return new Triangle(
                solid.vertex(solid.corner(triangle, 0)),
                solid.vertex(solid.corner(triangle, 1)),
                solid.vertex(solid.corner(triangle, 2)));
    }

    /** Outwards, as long as twice the area. */
    Vec3 normal() {
        return cross(b.minus(a), c.minus(a));
    }

    /** A corner, counted round and round. */
    Vec3 corner(int index) {
        return switch (index % 3) {
            case 0 -> a;
            case 1 -> b;
            default -> c;
        };
    }

    Segment side(int index) {
        return new Segment(corner(index), corner(index + 1));
    }

    /** Whether a point of its plane lies in it or on its sides. */
    boolean covers(Vec3 point) {
        var normal = normal();
        for (int i = 0; i < 3; i++) {
            var side = corner(i + 1).minus(corner(i));
            if (dot(cross(side, point.minus(corner(i))), normal) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The foot of a point's perpendicular on its plane. */
    Vec3 foot(Vec3 point) {
        var normal = normal();
        return point.minus(normal.times(dot(normal, point.minus(a)) / dot(normal, normal)));
    }

    Box3 box() {
        return Box3.between(a, b).union(new Box3(c, c));
    }
}
