package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.dot;

import java.util.List;
import java.util.Optional;
import org.standwright.geom.Vec3;

/** Measures between two faces that lie in one frame, or one face alone. */
public final class Measure {
    /** Sine of the angle between directions that are the same but for the grid that slanted faces are rounded to. */
    private static final double SAME_DIRECTION = 1e-3;

    private Measure() {}

    /** What one face alone tells: width and depth of a hole. Nothing of a plane. */
    public static Optional<Measured> of(Face face) {
        return face instanceof RoundFace round
                ? Optional.of(new Measured(
                        round.kind() == RoundFace.Kind.HOLE ? Measured.Kind.HOLE : Measured.Kind.POST,
                        round.depth(),
                        0,
                        round.diameter(),
                        new Segment(round.from(), round.to())))
                : Optional.empty();
    }

    /** From the first face to the second. */
    public static Measured between(Face first, Face second) {
        if (first instanceof FlatFace a && second instanceof FlatFace b && areAlong(a.normal(), b.normal())) {
            return planes(a, b);
        }
        if (first instanceof RoundFace a && second instanceof RoundFace b && areAlong(a.axis(), b.axis())) {
            return centres(a, b);
        }
        if (first instanceof RoundFace a && second instanceof FlatFace b && areSquare(a.axis(), b.normal())) {
            return toCentre(a, b);
        }
        if (first instanceof FlatFace a && second instanceof RoundFace b && areSquare(a.normal(), b.axis())) {
            var measured = toCentre(b, a);
            return new Measured(
                    measured.kind(), measured.mm(), 0, 0, measured.line().reversed());
        }
        var nearest = LeastDistance.between(first.triangles(), second.triangles());
        return new Measured(Measured.Kind.NEAREST, nearest.length(), degrees(first, second), 0, nearest);
    }

    private static Measured planes(FlatFace first, FlatFace second) {
        var from = new Overlap(first, second).place();
        double before = before(first, second);
        var line = new Segment(from, from.plus(first.normal().times(before)));
        return new Measured(kind(first, second, before), Math.abs(before), 0, 0, line);
    }

    /** How far the second plane lies before the first, mm. Slanted planes are hardly parallel, so in their middle. */
    private static double before(FlatFace first, FlatFace second) {
        var corners = second.triangles();
        if (isAlongAxis(first.normal())) {
            return first.before(corners.get(0).a());
        }
        return corners.stream()
                .flatMap(triangle -> List.of(triangle.a(), triangle.b(), triangle.c()).stream())
                .mapToDouble(first::before)
                .average()
                .orElseThrow();
    }

    private static Measured.Kind kind(FlatFace first, FlatFace second, double before) {
        if (dot(first.normal(), second.normal()) > 0) {
            return Measured.Kind.OFFSET;
        }
        return before > 0 ? Measured.Kind.BETWEEN : Measured.Kind.OVER_ALL;
    }

    /** At the middle of the first one's axis. */
    private static Measured centres(RoundFace first, RoundFace second) {
        var from = new Segment(first.from(), first.to()).middle();
        var axis = second.axis();
        var to = second.from().plus(axis.times(dot(axis, from.minus(second.from()))));
        var line = new Segment(from, to);
        return new Measured(Measured.Kind.CENTRES, line.length(), 0, 0, line);
    }

    private static Measured toCentre(RoundFace round, FlatFace flat) {
        var from = new Segment(round.from(), round.to()).middle();
        var line = new Segment(from, from.minus(flat.normal().times(flat.before(from))));
        return new Measured(Measured.Kind.TO_CENTRE, line.length(), 0, 0, line);
    }

    /** Between two planes, between two axes, or between a plane and an axis. */
    private static double degrees(Face first, Face second) {
        double between = StrictMath.toDegrees(StrictMath.acos(Math.min(1, Math.abs(dot(way(first), way(second))))));
        boolean mixed = first instanceof FlatFace != second instanceof FlatFace;
        return mixed ? 90 - between : between;
    }

    private static Vec3 way(Face face) {
        return face instanceof RoundFace round ? round.axis() : ((FlatFace) face).normal();
    }

    private static boolean areAlong(Vec3 a, Vec3 b) {
        return Products.length(Products.cross(a, b)) < SAME_DIRECTION;
    }

    private static boolean areSquare(Vec3 a, Vec3 b) {
        return Math.abs(dot(a, b)) < SAME_DIRECTION;
    }

    private static boolean isAlongAxis(Vec3 direction) {
        return Math.max(Math.abs(direction.x()), Math.max(Math.abs(direction.y()), Math.abs(direction.z()))) == 1;
    }
}
