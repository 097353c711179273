package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;

/** Areas for asking what meets what: lines as they are, arcs as chords. */
public final class Flat {
    /** How far chords may stand off their arc, mm. */
    public static final double TOLERANCE = 0.01;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Flat() {}

    public static Polygon of(Loop loop) {
        return polygon(loop.points(TOLERANCE));
    }

    public static Polygon of(Outline outline) {
        return polygon(outline.corners());
    }

    static Geometry disc(Vec2 centre, double radius) {
        return point(centre).buffer(radius, chords(radius));
    }

    public static Geometry point(Vec2 at) {
        return FACTORY.createPoint(new Coordinate(at.x(), at.y()));
    }

    static Geometry line(Vec2 from, Vec2 to) {
        return FACTORY.createLineString(
                new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
    }

    /** All within a distance of a line. */
    static Geometry slot(Vec2 from, Vec2 to, double radius) {
        return line(from, to).buffer(radius, chords(radius));
    }

    /** Of a quarter circle, so many that they stand off by no more than the tolerance. */
    private static int chords(double radius) {
        double each = 2 * StrictMath.acos(Math.max(0, 1 - TOLERANCE / radius));
        return Math.max(2, (int) Math.ceil(Math.PI / 2 / each));
    }

    /** What of an area lies in another one. */
    public static Geometry both(Geometry a, Geometry b) {
        return areas(OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION));
    }

    /** What of an area lies outside another one. */
    public static Geometry without(Geometry a, Geometry b) {
        return areas(OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE));
    }

    /** Without the points and lines where areas only touch. */
    private static Geometry areas(Geometry all) {
        return all instanceof Polygon ? all : FACTORY.buildGeometry(PolygonExtracter.getPolygons(all));
    }

    /** What lies within a distance, corners left sharp unless they are very sharp. */
    public static Geometry grown(Geometry area, double by) {
        return BufferOp.bufferOp(
                area, by, new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2));
    }

    /** The outer lines of all pieces of an area. */
    static List<Loop> loops(Geometry area) {
        var loops = new ArrayList<Loop>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon piece && piece.getArea() > Grid.STEP) {
                var ring = piece.getExteriorRing().getCoordinates();
                loops.add(new Loop(Arrays.stream(ring)
                        .limit(ring.length - 1L)
                        .map(at -> new Loop.Corner(at.x, at.y))
                        .toList()));
            }
        }
        return loops;
    }

    public static Geometry nothing() {
        return FACTORY.createPolygon();
    }

    private static Polygon polygon(List<Vec2> points) {
        var ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            var at = points.get(i % points.size());
            ring[i] = new Coordinate(at.x(), at.y());
        }
        return FACTORY.createPolygon(ring);
    }
}
