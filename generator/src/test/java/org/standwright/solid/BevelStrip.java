package org.standwright.solid;

import java.util.stream.DoubleStream;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Vec3;
import org.standwright.part.Edge;

/**
 * A sawn-off edge: a strip along it as wide as {@code setback} at the face and nothing where the cut comes out.
 *
 * @param length of the board
 * @param width of the board
 * @param face z of the face
 * @param out z at which the cut comes out at the edge
 */
record BevelStrip(Edge edge, double length, double width, double setback, double face, double out) implements Sloped {
    @Override
    public DoubleStream heights() {
        return DoubleStream.of(face, out);
    }

    /** A rectangle over the whole length of the edge. */
    @Override
    public Geometry at(double height) {
        double deep = setback * (height - out) / (face - out);
        if (!(deep > 0 && deep <= setback)) {
            return Footprints.FACTORY.createPolygon();
        }
        return Footprints.FACTORY.toGeometry(
                switch (edge) {
                    case X0 -> new Envelope(0, deep, 0, width);
                    case X1 -> new Envelope(length - deep, length, 0, width);
                    case Y0 -> new Envelope(0, length, 0, deep);
                    case Y1 -> new Envelope(0, length, width - deep, width);
                });
    }

    @Override
    public double innerDistance(Vec3 point) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double distance(Vec3 point) {
        double in = switch (edge) {
            case X0 -> point.x();
            case X1 -> length - point.x();
            case Y0 -> point.y();
            case Y1 -> width - point.y();
        };
        return Distance.pointToSegment(
                new Coordinate(in, point.z()), new Coordinate(0, out), new Coordinate(setback, face));
    }
}
