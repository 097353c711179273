package org.standwright.solid.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** Triangles of faces at random, against JTS, an independent library of plane geometry. */
class FacesTest {
    private static final int HEIGHT = 200;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    static Stream<Geometry> faces() {
        return LongStream.range(0, 40)
                .boxed()
                .flatMap(seed -> Stream.of(RandomFace.jagged(seed), RandomFace.rectangles(seed)));
    }

    static Stream<Geometry> someFaces() {
        return LongStream.range(200, 215)
                .boxed()
                .flatMap(seed -> Stream.of(RandomFace.jagged(seed), RandomFace.rectangles(seed)));
    }

    @ParameterizedTest
    @MethodSource("faces")
    void coverTheExactAreaWithTrianglesInside(Geometry face) {
        var triangles = triangles(face);
        var prepared = PreparedGeometryFactory.prepare(face);

        assertThat(triangles.stream().mapToDouble(Geometry::getArea).sum()).isEqualTo(face.getArea());
        assertThat(triangles).allMatch(triangle -> triangle.getArea() > 0);
        assertThat(triangles).allMatch(triangle -> prepared.covers(triangle.getCentroid()));
    }

    @ParameterizedTest
    @MethodSource("someFaces")
    void coverWhatAnotherTriangulatorCovers(Geometry face) {
        var triangles = triangles(face);

        assertThat(PolygonTriangulator.triangulate(face).getArea())
                .isCloseTo(triangles.stream().mapToDouble(Geometry::getArea).sum(), within(1e-6 * face.getArea()));
        assertThat(UnaryUnionOp.union(triangles).getArea())
                .as("without overlaps")
                .isCloseTo(face.getArea(), within(1e-6 * face.getArea()));
    }

    @ParameterizedTest
    @MethodSource("faces")
    void closeAPrism(Geometry face) {
        var sketch = new Sketch();
        for (var ring : rings(face)) {
            sketch.prism(0, HEIGHT, ring);
        }

        var mesh = sketch.closed();

        assertThat(Sketch.openEdges(mesh)).isZero();
        assertThat(Sketch.volume(mesh)).isCloseTo(face.getArea() * HEIGHT, within(1e-9 * face.getArea() * HEIGHT));
    }

    private static List<Polygon> triangles(Geometry face) {
        var planes = new Planes();
        int plane = planes.number(Planes.Plane.level(0, 1));
        var points = new Points();
        var numbers = new Quadruples();
        var edges = new Edges(16);
        for (var ring : rings(face)) {
            for (int i = 0; i < ring.length; i += 2) {
                int next = (i + 2) % ring.length;
                int from = point(ring[i], ring[i + 1], points, numbers);
                edges.add(plane, from, point(ring[next], ring[next + 1], points, numbers));
            }
        }
        var cut = Faces.cut(edges, points, planes);
        var triangles = new ArrayList<Polygon>();
        for (int i = 0; i < cut.count(); i += 3) {
            var a = new Coordinate(points.x(cut.get(i)), points.y(cut.get(i)));
            var b = new Coordinate(points.x(cut.get(i + 1)), points.y(cut.get(i + 1)));
            var c = new Coordinate(points.x(cut.get(i + 2)), points.y(cut.get(i + 2)));
            triangles.add(FACTORY.createPolygon(new Coordinate[] {a, b, c, a}));
        }
        return triangles;
    }

    private static int point(int x, int y, Points points, Quadruples numbers) {
        int number = numbers.number(x, y, 0, 0);
        return number < points.count() ? number : points.add(x, y, 0);
    }

    /** All rings with the face to the left, as x, y in turn. */
    private static List<int[]> rings(Geometry face) {
        var rings = new ArrayList<int[]>();
        for (int i = 0; i < face.getNumGeometries(); i++) {
            var polygon = (Polygon) face.getGeometryN(i);
            rings.add(ring(polygon.getExteriorRing(), true));
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                rings.add(ring(polygon.getInteriorRingN(hole), false));
            }
        }
        return rings;
    }

    private static int[] ring(LinearRing ring, boolean counterClockwise) {
        var corners = ring.getCoordinates();
        var xy = new int[2 * corners.length - 2];
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = (int) corners[i / 2].x;
            xy[i + 1] = (int) corners[i / 2].y;
        }
        return Orientation.isCCW(corners) == counterClockwise ? xy : Sketch.turned(xy);
    }
}
