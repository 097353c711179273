package org.standwright.router.machining;

import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.standwright.geom.Bend;
import org.standwright.geom.Loop;

/** Whether a round bit gets into an area. */
final class Width {
    /** An area narrower than the bit by no more is as wide as the bit, mm: a few chords of its arcs are. */
    private static final double PLAY = 0.03;
    /** What may be left besides corners before it is worth a word, mm². */
    private static final double LITTLE = 2;

    /** How far the largest circle inside may be off, mm; a finer one takes long in long narrow areas. */
    private static final double INSCRIBED = 0.05;

    /** Share of a bit's radius that its way may be off. */
    private static final double SIMPLER = 1e-4;

    private final double radius;
    private final Geometry flat;
    private final Geometry middles;
    private final double left;

    Width(Loop loop, double bit) {
        radius = bit / 2 - PLAY;
        flat = Flat.of(loop);
        middles = grown(flat, -radius);
        left = corners(loop);
    }

    /** The widest bit that gets in somewhere, if this one doesn't, mm. */
    OptionalDouble widest() {
        return middles.isEmpty() ? OptionalDouble.of(inscribed()) : OptionalDouble.empty();
    }

    /** Without the simplification that buffers begin with otherwise: it takes up to 1 % of the distance off an arc. */
    private static Geometry grown(Geometry area, double by) {
        var exact = new BufferParameters(32);
        exact.setSimplifyFactor(SIMPLER);
        return BufferOp.bufferOp(area, by, exact);
    }

    /** Diameter of the largest circle inside, mm. */
    private double inscribed() {
        var around = flat.getEnvelopeInternal();
        return around.getArea() - flat.getArea() < Flat.TOLERANCE
                ? Math.min(around.getWidth(), around.getHeight())
                : 2 * MaximumInscribedCircle.getRadiusLine(flat, INSCRIBED).getLength();
    }

    /** Whether the bit gets in, but not everywhere. */
    boolean isNarrowInPlaces() {
        return !middles.isEmpty()
                && (middles.getNumGeometries() > 1
                        || Flat.without(flat, grown(middles, radius)).getArea() > left + LITTLE);
    }

    /** Area that the bit leaves in corners that it fits beside, mm². */
    private double corners(Loop loop) {
        double area = 0;
        var sides = loop.sides();
        for (int i = 0; i < sides.size(); i++) {
            var side = sides.get(i);
            var next = sides.get((i + 1) % sides.size());
            if (side.isArc() && side.bulge() > 0 && side.radius() < radius) {
                area += leftBy(side.angle(), side.radius());
            } else if (!side.isArc() && !next.isArc()) {
                area += leftBy(turn(side, next), 0);
            }
        }
        return area;
    }

    /** (R² - r²) (tan(a / 2) - a / 2), between the bit's arc and a rounding of radius r in a corner that turns by a. */
    private double leftBy(double turn, double rounding) {
        return turn > 0 && turn < Math.PI
                ? (radius * radius - rounding * rounding) * (StrictMath.tan(turn / 2) - turn / 2)
                : 0;
    }

    private static double turn(Bend side, Bend next) {
        var in = side.to().minus(side.from());
        var out = next.to().minus(next.from());
        return StrictMath.atan2(in.cross(out), in.x() * out.x() + in.y() * out.y());
    }
}
