package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.cross;
import static org.standwright.viewer.scene.measure.Products.dot;
import static org.standwright.viewer.scene.measure.Products.unit;

import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.geom.Vec3;

/** Where two parallel faces lie over each other, seen along their normal. */
final class Overlap {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final FlatFace first;
    private final Vec3 u;
    private final Vec3 v;
    private final Geometry one;
    private final Geometry other;
    private final Geometry shared;

    Overlap(FlatFace first, FlatFace second) {
        this.first = first;
        var normal = first.normal();
        boolean flatEnough = Math.abs(normal.x()) < 0.7;
        this.u = unit(cross(normal, flatEnough ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0)));
        this.v = cross(normal, u);
        this.one = seen(first);
        this.other = seen(second);
        this.shared = OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }

    /** Whether they share more than a line. */
    boolean isSomething() {
        return shared.getArea() > 0;
    }

    /** A point of the first face, over the second where they overlap, else as near to it as the first reaches. */
    Vec3 place() {
        var place = isSomething() ? shared.getInteriorPoint().getCoordinate() : DistanceOp.nearestPoints(one, other)[0];
        return u.times(place.x).plus(v.times(place.y)).plus(first.normal().times(first.at()));
    }

    private Geometry seen(FlatFace face) {
        return CoverageUnion.union(face.triangles().stream().map(this::seen).toArray(Geometry[]::new));
    }

    private Geometry seen(Triangle triangle) {
        return FACTORY.createPolygon(
                new Coordinate[] {seen(triangle.a()), seen(triangle.b()), seen(triangle.c()), seen(triangle.a())});
    }

    private Coordinate seen(Vec3 point) {
        return new Coordinate(dot(u, point), dot(v, point));
    }
}
