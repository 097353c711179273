package org.standwright.solid.exact;

import java.util.List;
import org.standwright.geom.Vec3;

/** The line that an edge follows, in the direction of the edge. Vectors that give a direction are 1 long. */
public sealed interface Curve {
    /** A straight one. */
    record Line(Vec3 point, Vec3 direction) implements Curve {}

    /** Counter-clockwise seen against its axis, from {@code start} on. */
    record Circle(Vec3 centre, Vec3 axis, Vec3 start, double radius) implements Curve {}

    /** Counter-clockwise seen against its axis. */
    record Ellipse(Vec3 centre, Vec3 axis, Vec3 major, double majorRadius, double minorRadius) implements Curve {}

    /**
     * Cubic pieces that go on into each other without a bend (a B-spline): four poles for the first piece and two for
     * each one more, a knot at either end of each piece.
     */
    record Spline(List<Vec3> poles, List<Double> knots) implements Curve {
        public Spline {
            poles = List.copyOf(poles);
            knots = List.copyOf(knots);
        }
    }
}
