package org.standwright.solid;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Vec3;

/**
 * A hole into an edge: takes its whole section between two places along x ({@code end}) or y.
 *
 * @param section closed ring of (position along the edge, z), convex
 */
record Bore(Coordinate[] section, boolean end, double from, double to) implements Sloped {
    @Override
    public DoubleStream heights() {
        return Arrays.stream(section).mapToDouble(corner -> corner.y);
    }

    /** A rectangle. */
    @Override
    public Geometry at(double height) {
        var chord = new Envelope();
        for (int i = 0; i + 1 < section.length; i++) {
            var a = section[i];
            var b = section[i + 1];
            if (a.y != b.y && Math.min(a.y, b.y) <= height && height <= Math.max(a.y, b.y)) {
                chord.expandToInclude(a.x + (b.x - a.x) * (height - a.y) / (b.y - a.y), height);
            }
        }
        if (!(chord.getWidth() > 0)) {
            return Footprints.FACTORY.createPolygon();
        }
        return Footprints.FACTORY.toGeometry(
                end
                        ? new Envelope(from, to, chord.getMinX(), chord.getMaxX())
                        : new Envelope(chord.getMinX(), chord.getMaxX(), from, to));
    }

    @Override
    public double distance(Vec3 point) {
        return distance(Footprints.FACTORY.createLineString(section), point);
    }

    @Override
    public double innerDistance(Vec3 point) {
        return distance(Footprints.FACTORY.createMultiPointFromCoords(section), point);
    }

    /** From something of the section, seen end on. */
    private double distance(Geometry some, Vec3 point) {
        double in = end ? point.x() : point.y();
        if (in < from - 1 / 1024.0 || in > to + 1 / 1024.0) {
            return Double.POSITIVE_INFINITY;
        }
        var endOn = new Coordinate(end ? point.y() : point.x(), point.z());
        return some.distance(Footprints.FACTORY.createPoint(endOn));
    }
}
