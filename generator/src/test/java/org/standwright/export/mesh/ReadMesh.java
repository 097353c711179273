package org.standwright.export.mesh;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What a reader that is not ours found, in mm with z up.
 *
 * @param low corner of the box around it
 * @param high corner of that box
 */
record ReadMesh(String name, List<Triangle> triangles, Vector3D low, Vector3D high) {
    record Triangle(Vector3D a, Vector3D b, Vector3D c) {
        /** Of the tetrahedron up to a point, six times. */
        private double sixfold(Vector3D from) {
            return a.subtract(from).dot(b.subtract(from).cross(c.subtract(from)));
        }
    }

    ReadMesh(String name, List<Triangle> triangles) {
        this(
                name,
                List.copyOf(triangles),
                least(triangles, 1),
                least(triangles, -1).negate());
    }

    private static Vector3D least(List<Triangle> triangles, int sign) {
        double x = Double.POSITIVE_INFINITY;
        double y = Double.POSITIVE_INFINITY;
        double z = Double.POSITIVE_INFINITY;
        for (var t : triangles) {
            for (var corner : List.of(t.a, t.b, t.c)) {
                x = Math.min(x, sign * corner.getX());
                y = Math.min(y, sign * corner.getY());
                z = Math.min(z, sign * corner.getZ());
            }
        }
        return Vector3D.of(x, y, z);
    }

    /** mm³, about the box's centre, where rounding matters least. */
    double volume() {
        var centre = low.lerp(high, 0.5);
        return triangles.stream().mapToDouble(t -> t.sixfold(centre)).sum() / 6;
    }

    Vector3D centroid() {
        var centre = low.lerp(high, 0.5);
        double sixfold = 0;
        var moment = Vector3D.ZERO;
        for (var t : triangles) {
            double part = t.sixfold(centre);
            sixfold += part;
            moment = moment.add(part / 4, t.a.add(t.b).add(t.c).subtract(3, centre));
        }
        return centre.add(moment.multiply(1 / sixfold));
    }
}
