package org.standwright.viewer.scene.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;

/**
 * A region of a plane with holes, to be cut into triangles between its corners. Every corner is used, also one in the
 * middle of a straight side, so that its triangles fit to neighbours that have the same corners.
 *
 * @param corners of all rings
 * @param rim indices of corners in turn, counter-clockwise
 * @param holes the same for each hole, clockwise
 */
public record FlatRegion(List<Vec2> corners, List<Integer> rim, List<List<Integer>> holes) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    public FlatRegion {
        corners = List.copyOf(corners);
        rim = List.copyOf(rim);
        holes = List.copyOf(holes);
    }

    /** The pieces of an area, each with its holes; lines and points in it don't count. */
    public static List<FlatRegion> of(Geometry area) {
        var regions = new ArrayList<FlatRegion>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty()) {
                regions.add(of(piece));
            }
        }
        return regions;
    }

    private static FlatRegion of(Polygon piece) {
        var turned = (Polygon) piece.norm().reverse(); // normal form runs the other way round
        var corners = new ArrayList<Vec2>();
        var rim = numbered(turned.getExteriorRing(), corners);
        var holes = IntStream.range(0, turned.getNumInteriorRing())
                .mapToObj(hole -> numbered(turned.getInteriorRingN(hole), corners))
                .toList();
        return new FlatRegion(corners, rim, holes);
    }

    private static List<Integer> numbered(LinearRing ring, List<Vec2> corners) {
        int from = corners.size();
        Arrays.stream(ring.getCoordinates())
                .limit(ring.getNumPoints() - 1L)
                .forEach(corner -> corners.add(new Vec2(corner.x, corner.y)));
        return IntStream.range(from, corners.size()).boxed().toList();
    }

    /** The outline as an area of its own. */
    public static Polygon polygon(Outline outline) {
        return FACTORY.createPolygon(IntStream.rangeClosed(0, outline.corners().size())
                .mapToObj(outline::corner)
                .map(corner -> new Coordinate(corner.x(), corner.y()))
                .toArray(Coordinate[]::new));
    }

    /** Three indices of corners each, counter-clockwise. */
    public List<int[]> triangles() {
        if (holes.isEmpty() && rim.size() == 3) {
            return List.of(upwards(new int[] {rim.get(0), rim.get(1), rim.get(2)}));
        }
        var polygon = polygon();
        // rings that touch or, by rounding, cross themselves are taken apart first
        return triangles(PolygonTriangulator.triangulate(polygon.isValid() ? polygon : GeometryFixer.fix(polygon)));
    }

    private Polygon polygon() {
        return FACTORY.createPolygon(ring(rim), holes.stream().map(this::ring).toArray(LinearRing[]::new));
    }

    /** The index of a corner goes along as its height. */
    private LinearRing ring(List<Integer> indices) {
        return FACTORY.createLinearRing(IntStream.rangeClosed(0, indices.size())
                .map(i -> indices.get(i % indices.size()))
                .mapToObj(index -> new Coordinate(
                        corners.get(index).x(), corners.get(index).y(), index))
                .toArray(Coordinate[]::new));
    }

    private List<int[]> triangles(Geometry geometry) {
        var triangles = new ArrayList<int[]>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            var ring = geometry.getGeometryN(i).getCoordinates();
            triangles.add(
                    upwards(Arrays.stream(ring).limit(3).mapToInt(this::index).toArray()));
        }
        return triangles;
    }

    private int index(Coordinate place) {
        return Double.isNaN(place.getZ()) ? nearest(place) : (int) place.getZ();
    }

    private int nearest(Coordinate place) {
        var at = new Vec2(place.x, place.y);
        int nearest = 0;
        for (int i = 1; i < corners.size(); i++) {
            if (corners.get(i).minus(at).length()
                    < corners.get(nearest).minus(at).length()) {
                nearest = i;
            }
        }
        return nearest;
    }

    private int[] upwards(int[] triangle) {
        return twice(triangle) >= 0 ? triangle : new int[] {triangle[0], triangle[2], triangle[1]};
    }

    private double twice(int[] triangle) {
        var a = corners.get(triangle[0]);
        return corners.get(triangle[1]).minus(a).cross(corners.get(triangle[2]).minus(a));
    }
}
