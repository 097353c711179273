package org.standwright.solid.mesh;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Faces at random on whole coordinates, with holes; some in several parts. */
final class RandomFace {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int CELL = 10_000;

    private final SplittableRandom random;

    private RandomFace(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A jagged outline with jagged holes that touch nothing. */
    static Geometry jagged(long seed) {
        return new RandomFace(seed).jagged();
    }

    /** Rectangles on a coarse lattice put together and cut away: corners touch, edges go on straight. */
    static Geometry rectangles(long seed) {
        return new RandomFace(seed).rectangles();
    }

    private Geometry jagged() {
        int columns = random.nextInt(1, 6);
        Geometry face = star(CELL * columns / 2, CELL * columns / 2, CELL * columns, 0.75, random.nextInt(3, 40));
        for (int i = 0; i < columns * columns; i++) {
            var hole = star(CELL * (i % columns) + CELL / 2, CELL * (i / columns) + CELL / 2, CELL / 2, 0.1, 9);
            if (random.nextInt(3) > 0 && face.buffer(-2).covers(hole)) {
                face = FACTORY.createPolygon(((Polygon) face).getExteriorRing(), rings((Polygon) face, hole));
            }
        }
        return face;
    }

    private static LinearRing[] rings(Polygon face, Polygon hole) {
        int holes = face.getNumInteriorRing();
        return IntStream.rangeClosed(0, holes)
                .mapToObj(i -> i < holes ? face.getInteriorRingN(i) : hole.getExteriorRing())
                .toArray(LinearRing[]::new);
    }

    /** Valid and of whole coordinates, all within {@code radius} of the centre. */
    private Polygon star(int x, int y, int radius, double inner, int corners) {
        Polygon star;
        do {
            var angles = random.doubles(corners, 0, 2 * Math.PI).sorted().toArray();
            var ring = new Coordinate[corners + 1];
            for (int i = 0; i < corners; i++) {
                double r = radius * random.nextDouble(inner, 1);
                ring[i] = new Coordinate(
                        Math.rint(x + r * StrictMath.cos(angles[i])), Math.rint(y + r * StrictMath.sin(angles[i])));
            }
            ring[corners] = ring[0];
            star = FACTORY.createPolygon(ring);
        } while (!star.isValid());
        return star;
    }

    private Geometry rectangles() {
        Geometry face = rectangle();
        for (int i = random.nextInt(2, 40); i > 0; i--) {
            face = random.nextInt(2) == 0 ? face.union(rectangle()) : face.difference(rectangle());
        }
        return face.isEmpty() ? rectangle() : face;
    }

    private Geometry rectangle() {
        int x = random.nextInt(0, 10);
        int y = random.nextInt(0, 10);
        int width = random.nextInt(1, 5);
        int height = random.nextInt(1, 5);
        var box = new Envelope(1000 * x, 1000 * (x + width), 1000 * y, 1000 * (y + height));
        return FACTORY.toGeometry(box);
    }
}
