package org.standwright.solid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.standwright.solid.layer.Ring;
import org.standwright.solid.mesh.BrokenMeshException;

/** A ring cut into convex pieces corner to corner, for the kernel, which takes convex faces only. */
final class ConvexPieces {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private ConvexPieces() {}

    /** Each piece as corners of the ring in turn: the ring itself when it is convex, else triangles. */
    static List<int[]> of(Ring ring) {
        if (ring.isConvex()) {
            return List.of(IntStream.range(0, ring.size()).toArray());
        }
        var corners = new HashMap<Coordinate, Integer>();
        var closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            closed[i] = new Coordinate(ring.u(i), ring.v(i));
            corners.put(closed[i], i);
        }
        closed[ring.size()] = closed[0];
        var triangles = triangles(closed);
        return IntStream.range(0, triangles.getNumGeometries())
                .mapToObj(i -> corners(triangles.getGeometryN(i), corners))
                .toList();
    }

    private static Geometry triangles(Coordinate[] closed) {
        try {
            return PolygonTriangulator.triangulate(FACTORY.createPolygon(closed));
        } catch (IllegalStateException e) {
            throw new BrokenMeshException("an outline touches itself on the 1/1024 mm grid");
        }
    }

    private static int[] corners(Geometry triangle, Map<Coordinate, Integer> corners) {
        var at = triangle.norm().reverse().getCoordinates();
        return new int[] {corners.get(at[0]), corners.get(at[1]), corners.get(at[2])};
    }
}
