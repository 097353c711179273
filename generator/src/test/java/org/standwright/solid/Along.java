package org.standwright.solid;

import org.standwright.geom.Vec3;
import org.standwright.solid.exact.Curve;
import org.standwright.solid.exact.ExactSolid;
import org.standwright.solid.exact.ExactSolid.Edge;

/** Places along an edge of an exact solid, worked out from its curve's definition alone. */
final class Along {
    /** Short pieces of an edge are all alike. */
    private static final int PIECES = 24;

    /** A place, and the way that it moves as the share grows by one. */
    record Place(Vec3 at, Vec3 way) {}

    private final Curve curve;
    private final Vec3 from;
    private final Vec3 to;
    private final double start;
    private final double turn;

    Along(ExactSolid solid, Edge edge) {
        curve = edge.curve();
        from = solid.corners().get(edge.from());
        to = solid.corners().get(edge.to());
        start = angle(from);
        double left = angle(to) - start;
        turn = edge.from() == edge.to() ? 2 * Math.PI : left < 0 ? left + 2 * Math.PI : left;
    }

    /** How many pieces to look at it in. */
    int pieces() {
        return curve instanceof Curve.Line
                ? 1
                : curve instanceof Curve.Spline spline ? spline.knots().size() - 1 : PIECES;
    }

    private double angle(Vec3 at) {
        if (curve instanceof Curve.Circle circle) {
            var arm = at.minus(circle.centre());
            return Math.atan2(
                    circle.axis().cross(circle.start()).dot(arm), circle.start().dot(arm));
        }
        if (curve instanceof Curve.Ellipse ellipse) {
            var arm = at.minus(ellipse.centre());
            return Math.atan2(
                    ellipse.axis().cross(ellipse.major()).dot(arm) / ellipse.minorRadius(),
                    ellipse.major().dot(arm) / ellipse.majorRadius());
        }
        return 0;
    }

    /** At this share, 0 to 1, of a piece. */
    Place at(int piece, double share) {
        if (curve instanceof Curve.Circle circle) {
            return round(
                    circle.centre(), circle.axis(), circle.start(), circle.radius(), circle.radius(), piece, share);
        }
        if (curve instanceof Curve.Ellipse e) {
            return round(e.centre(), e.axis(), e.major(), e.majorRadius(), e.minorRadius(), piece, share);
        }
        if (curve instanceof Curve.Spline spline) {
            return spline(spline, piece, share);
        }
        var way = to.minus(from);
        return new Place(from.plus(way.times(share)), way);
    }

    private Place round(Vec3 centre, Vec3 axis, Vec3 first, double along, double across, int piece, double share) {
        double angle = start + turn * (piece + share) / PIECES;
        var second = axis.cross(first);
        var at = centre.plus(first.times(along * Math.cos(angle))).plus(second.times(across * Math.sin(angle)));
        var way = second.times(across * Math.cos(angle)).minus(first.times(along * Math.sin(angle)));
        return new Place(at, way.times(turn / PIECES));
    }

    /** By de Boor's recursion: C. de Boor, 'On calculating with B-splines', 1972; knots inside are double ones. */
    private static Place spline(Curve.Spline spline, int piece, double share) {
        double a = spline.knots().get(piece);
        double b = spline.knots().get(piece + 1);
        double at = a + share * (b - a);
        double step = 1e-6 * (b - a);
        var way = deBoor(spline, piece, at + step).minus(deBoor(spline, piece, at - step));
        return new Place(deBoor(spline, piece, at), way.times((b - a) / (2 * step)));
    }

    private static Vec3 deBoor(Curve.Spline spline, int piece, double at) {
        int last = 2 * piece + 3;
        var points = new Vec3[4];
        for (int i = 0; i < 4; i++) {
            points[i] = spline.poles().get(last - 3 + i);
        }
        for (int level = 1; level <= 3; level++) {
            for (int i = 3; i >= level; i--) {
                double low = knot(spline, last - 3 + i);
                double high = knot(spline, last + i + 1 - level);
                double share = (at - low) / (high - low);
                points[i] = points[i - 1].times(1 - share).plus(points[i].times(share));
            }
        }
        return points[3];
    }

    /** With four equal ones at either end and two between. */
    private static double knot(Curve.Spline spline, int index) {
        int number = Math.max(0, Math.min(spline.knots().size() - 1, (index - 2) / 2));
        return spline.knots().get(number);
    }
}
