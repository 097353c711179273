package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;

/**
 * Where a second outline may not be shifted to so that it keeps clear of a first: their no-fit polygon, the Minkowski sum
 * of the first and the reflected second, widened by the clear distance. Each is cut into triangles; the sum of two
 * triangles is the hull of the sums of their corners. After J. A. Bennell, J. F. Oliveira, The geometry of nesting
 * problems: A tutorial, EJOR 2008.
 */
final class Clearance {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Sides that stand for a quarter of a circle. */
    private static final int SIDES = 8;

    private Clearance() {}

    /**
     * The shifts of the second outline that bring it nearer than a distance; a little too wide at corners, never too
     * narrow.
     */
    static Geometry barred(Outline first, Outline second, double distance) {
        var reflected = second.moved(at -> at.times(-1));
        var sums = new ArrayList<Geometry>();
        for (var a : triangles(first)) {
            for (var b : triangles(reflected)) {
                sums.add(sum(a, b));
            }
        }
        // sides round a circle, not within it
        double around = distance / StrictMath.cos(Math.PI / (4 * SIDES));
        return OverlayNGRobust.union(sums).buffer(around, SIDES, BufferParameters.CAP_ROUND);
    }

    static double distance(Outline first, Outline second) {
        return polygon(first).distance(polygon(second));
    }

    private static Geometry sum(Coordinate[] a, Coordinate[] b) {
        var corners = new ArrayList<Coordinate>();
        for (int i = 0; i < a.length - 1; i++) {
            for (int j = 0; j < b.length - 1; j++) {
                corners.add(new Coordinate(a[i].x + b[j].x, a[i].y + b[j].y));
            }
        }
        return FACTORY.createMultiPointFromCoords(corners.toArray(Coordinate[]::new))
                .convexHull();
    }

    private static List<Coordinate[]> triangles(Outline outline) {
        var triangles = PolygonTriangulator.triangulate(polygon(outline));
        var all = new ArrayList<Coordinate[]>();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            all.add(triangles.getGeometryN(i).getCoordinates());
        }
        return all;
    }

    private static Polygon polygon(Outline outline) {
        var corners = outline.corners();
        return FACTORY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(Clearance::coordinate)
                .toArray(Coordinate[]::new));
    }

    private static Coordinate coordinate(Vec2 at) {
        return new Coordinate(at.x(), at.y());
    }
}
