package org.standwright.solid;

import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Vec3;

/**
 * A countersink: a ring that shrinks from its mouth in a face to its hole.
 *
 * @param mouth closed ring
 * @param bore closed ring of as many corners
 * @param face z of the mouth
 * @param floor z of the bore
 */
record Sink(Coordinate[] mouth, Coordinate[] bore, double face, double floor) implements Sloped {
    @Override
    public DoubleStream heights() {
        return DoubleStream.of(face, floor);
    }

    @Override
    public Geometry at(double height) {
        if (height < Math.min(face, floor) || height > Math.max(face, floor)) {
            return Footprints.FACTORY.createPolygon();
        }
        return Footprints.FACTORY.createPolygon(ring(height));
    }

    private Coordinate[] ring(double height) {
        double open = (height - floor) / (face - floor);
        var ring = new Coordinate[mouth.length];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(
                    bore[i].x + open * (mouth[i].x - bore[i].x), bore[i].y + open * (mouth[i].y - bore[i].y));
        }
        return ring;
    }

    /** Each flank is two triangles, and rounding has seldom left them in one plane: their edge may lie anywhere on it. */
    @Override
    public double innerDistance(Vec3 point) {
        return distance(point);
    }

    /** Measured level and then square to the flank, as all flanks are equally steep. */
    @Override
    public double distance(Vec3 point) {
        double beyond = Math.max(low() - point.z(), point.z() - high());
        if (beyond > 1 / 1024.0) {
            return Double.POSITIVE_INFINITY;
        }
        double height = Math.max(low(), Math.min(point.z(), high()));
        var fromAbove = Footprints.FACTORY.createPoint(new Coordinate(point.x(), point.y()));
        double level = Footprints.FACTORY.createLineString(ring(height)).distance(fromAbove);
        double deep = high() - low();
        double wider = apothem(mouth) - apothem(bore);
        return Math.hypot(level * deep / Math.hypot(deep, wider), Math.max(0, beyond));
    }

    /** From the centre to the middle of a side. */
    private static double apothem(Coordinate[] ring) {
        int half = (ring.length - 1) / 2;
        double x = (ring[0].x + ring[1].x) / 2 - (ring[half].x + ring[half + 1].x) / 2;
        double y = (ring[0].y + ring[1].y) / 2 - (ring[half].y + ring[half + 1].y) / 2;
        return Math.hypot(x, y) / 2;
    }
}
