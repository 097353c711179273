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

        /** How many pieces there are. */
        public int pieces() {
            return knots.size() - 1;
        }

        /** The point of a piece that lies at this share of its knots, 0 to 1. */
        public Vec3 at(int piece, double share) {
            double rest = 1 - share;
            return end(piece)
                    .times(rest * rest * rest)
                    .plus(poles.get(2 * piece + 1).times(3 * rest * rest * share))
                    .plus(poles.get(2 * piece + 2).times(3 * rest * share * share))
                    .plus(end(piece + 1).times(share * share * share));
        }

        /** Where pieces meet: between the poles on either side, as far from each as its piece is long in knots. */
        private Vec3 end(int number) {
            if (number == 0 || number == pieces()) {
                return poles.get(number == 0 ? 0 : poles.size() - 1);
            }
            double before = knots.get(number) - knots.get(number - 1);
            double after = knots.get(number + 1) - knots.get(number);
            return poles.get(2 * number)
                    .times(after / (before + after))
                    .plus(poles.get(2 * number + 1).times(before / (before + after)));
        }
    }
}
