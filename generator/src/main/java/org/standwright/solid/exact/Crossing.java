package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.geom.Vec3;

/**
 * The curve in which two surfaces cross when it has no simpler name: cubic pieces between points of both surfaces, along
 * it at either end, halved until they are within a five-millionth of a millimetre of both.
 */
final class Crossing {
    private static final double CLOSE = 2e-7;
    private static final int MOST_PIECES = 2000;
    /** Points of the mesh nearer than this to the last are left out, mm. */
    private static final double SHORT = 0.2;

    private final Surface one;
    private final Surface other;
    private final List<Vec3> poles = new ArrayList<>();
    private final List<Double> knots = new ArrayList<>(List.of(0.0));

    private Crossing(Surface one, Surface other) {
        this.one = one;
        this.other = other;
    }

    /**
     * @param chain places near it in turn, the first and the last on it
     */
    static Optional<Curve> of(Surface one, Surface other, List<Vec3> chain) {
        var crossing = new Crossing(one, other);
        return crossing.along(chain) ? Optional.of(new Curve.Spline(crossing.poles, crossing.knots)) : Optional.empty();
    }

    private boolean along(List<Vec3> chain) {
        var end = chain.get(chain.size() - 1);
        var from = chain.get(0);
        poles.add(from);
        for (int i = 1; i < chain.size(); i++) {
            var to = i == chain.size() - 1 ? end : onBoth(chain.get(i));
            boolean last = i == chain.size() - 1;
            boolean close = to.minus(from).length() < SHORT || to.minus(end).length() < SHORT;
            if (last || !close) {
                if (!add(from, to)) {
                    return false;
                }
                from = to;
            }
        }
        poles.add(end);
        return true;
    }

    private Vec3 onBoth(Vec3 near) {
        return Constraint.solve(List.of(one, other), near);
    }

    private boolean add(Vec3 from, Vec3 to) {
        var chord = to.minus(from);
        if (chord.length() < 10 * CLOSE || knots.size() > MOST_PIECES) {
            return false;
        }
        var start = along(from, chord);
        var end = along(to, chord);
        double quarter = StrictMath.acos(Math.max(-1, Math.min(1, start.dot(end)))) / 4;
        double reach = chord.length() / (3 * Math.pow(StrictMath.cos(quarter), 2));
        var second = from.plus(start.times(reach));
        var third = to.minus(end.times(reach));
        if (isClose(from, second, third, to)) {
            poles.add(second);
            poles.add(third);
            knots.add(knots.get(knots.size() - 1) + reach);
            return true;
        }
        var half = onBoth(at(from, second, third, to, 0.5));
        return Constraint.hold(List.of(one, other), half) && add(from, half) && add(half, to);
    }

    private Vec3 along(Vec3 at, Vec3 chord) {
        var along = one.normal(at).cross(other.normal(at));
        return along.unit().times(along.dot(chord) < 0 ? -1 : 1);
    }

    private boolean isClose(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
        for (double share : new double[] {0.2, 0.35, 0.5, 0.65, 0.8}) {
            var at = at(a, b, c, d, share);
            if (!(Math.abs(one.distance(at)) < CLOSE && Math.abs(other.distance(at)) < CLOSE)) {
                return false;
            }
        }
        return true;
    }

    private static Vec3 at(Vec3 a, Vec3 b, Vec3 c, Vec3 d, double t) {
        double s = 1 - t;
        return a.times(s * s * s)
                .plus(b.times(3 * s * s * t))
                .plus(c.times(3 * s * t * t))
                .plus(d.times(t * t * t));
    }
}
