package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.standwright.geom.Vec3;

/** An edge as straight pieces that stay close to it, from its first corner to its last. */
final class Sampled {
    private static final double CLOSE = 0.002;
    private static final int IN_A_PIECE = 8;

    private Sampled() {}

    static List<Vec3> of(Curve curve, Vec3 from, Vec3 to) {
        if (curve instanceof Curve.Circle circle) {
            double turn = turn(circle.axis(), from.minus(circle.centre()), to.minus(circle.centre()));
            var up = circle.axis().cross(circle.start());
            return arc(
                    circle.radius(),
                    turn,
                    from,
                    to,
                    angle -> circle.centre()
                            .plus(circle.start().times(circle.radius() * StrictMath.cos(angle)))
                            .plus(up.times(circle.radius() * StrictMath.sin(angle))));
        }
        if (curve instanceof Curve.Ellipse ellipse) {
            return ellipse(ellipse, from, to);
        }
        return curve instanceof Curve.Spline spline ? spline(spline) : List.of(from, to);
    }

    private static List<Vec3> ellipse(Curve.Ellipse ellipse, Vec3 from, Vec3 to) {
        var minor = ellipse.axis().cross(ellipse.major());
        double start = angle(ellipse, minor, from);
        double turn = StrictMath.IEEEremainder(angle(ellipse, minor, to) - start, 2 * Math.PI);
        turn = from.equals(to) || turn < 0 ? turn + 2 * Math.PI : turn;
        return arc(
                ellipse.majorRadius(),
                turn,
                from,
                to,
                angle -> ellipse.centre()
                        .plus(ellipse.major().times(ellipse.majorRadius() * StrictMath.cos(start + angle)))
                        .plus(minor.times(ellipse.minorRadius() * StrictMath.sin(start + angle))));
    }

    private static double angle(Curve.Ellipse ellipse, Vec3 minor, Vec3 at) {
        var arm = at.minus(ellipse.centre());
        return StrictMath.atan2(
                minor.dot(arm) / ellipse.minorRadius(), ellipse.major().dot(arm) / ellipse.majorRadius());
    }

    private static double turn(Vec3 axis, Vec3 from, Vec3 to) {
        return from.equals(to) ? 2 * Math.PI : Turning.left(axis, from, to);
    }

    private static List<Vec3> arc(double radius, double turn, Vec3 from, Vec3 to, DoubleFunction<Vec3> at) {
        double most = 2 * StrictMath.acos(Math.max(0, 1 - CLOSE / radius));
        int pieces = (int) Math.ceil(turn / most);
        var points = new ArrayList<>(List.of(from));
        for (int i = 1; i < pieces; i++) {
            points.add(at.apply(turn * i / pieces));
        }
        points.add(to);
        return points;
    }

    private static List<Vec3> spline(Curve.Spline spline) {
        var points = new ArrayList<Vec3>();
        for (int piece = 0; piece < spline.pieces(); piece++) {
            for (int i = piece == 0 ? 0 : 1; i <= IN_A_PIECE; i++) {
                points.add(spline.at(piece, (double) i / IN_A_PIECE));
            }
        }
        return points;
    }
}
