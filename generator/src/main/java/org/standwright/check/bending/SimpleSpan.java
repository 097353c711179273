package org.standwright.check.bending;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.standwright.geom.Require;

/**
 * A beam on two supports under any loads between them, exact by superposition.
 *
 * <p>From E I v″ = −M with M = R x − Σ (load left of x · its lever): E I v = c x − R x³/6 + Σ bent(x), where bent is the
 * load's moment integrated twice and c makes v vanish at the right support. All loads act downwards, so v and M have one
 * hump each and their peaks are found by narrowing the span around them.
 *
 * @param length between the supports, mm
 * @param stiffness E I, N·mm²
 */
public record SimpleSpan(double length, double stiffness, List<SpanLoad> loads) {
    /** Each step keeps 0.618 of what is left: 90 steps reach the last digit of a double. */
    private static final int STEPS = 90;

    private static final double GOLDEN = 0.6180339887498949;

    public SimpleSpan {
        Require.positive("span", length, "beam");
        Require.positive("stiffness", stiffness, "beam");
        loads = List.copyOf(loads);
        for (var load : loads) {
            if (load.to() > length) {
                throw new IllegalArgumentException(
                        "a load ends " + load.to() + " mm from the left support, but the span is " + length + " mm.");
            }
        }
    }

    /** Reaction of the left support, N. */
    public double leftReaction() {
        return loads.stream()
                .mapToDouble(load -> load.total() * (length - load.middle()) / length)
                .sum();
    }

    /** Bending moment at {@code x} from the left support, N·mm. */
    public double momentAt(double x) {
        return leftReaction() * x
                - loads.stream().mapToDouble(load -> load.momentAt(x)).sum();
    }

    /** Deflection at {@code x} from the left support, mm. */
    public double deflectionAt(double x) {
        double slope = -bentAt(length) / length;
        return (slope * x + bentAt(x)) / stiffness;
    }

    private double bentAt(double x) {
        return loads.stream().mapToDouble(load -> load.bentAt(x)).sum() - leftReaction() * x * x * x / 6;
    }

    /** Greatest deflection, mm. */
    public double deflection() {
        return peak(this::deflectionAt);
    }

    /** Greatest bending moment, N·mm. */
    public double moment() {
        return peak(this::momentAt);
    }

    /** The largest value over the span of a curve with one hump. */
    private double peak(DoubleUnaryOperator curve) {
        double left = 0;
        double right = length;
        for (int step = 0; step < STEPS; step++) {
            double inner = GOLDEN * (right - left);
            if (curve.applyAsDouble(right - inner) < curve.applyAsDouble(left + inner)) {
                left = right - inner;
            } else {
                right = left + inner;
            }
        }
        return curve.applyAsDouble((left + right) / 2);
    }
}
