package org.standwright.check.balance.statics;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standwright.geom.Vec2;

/**
 * Four feet under a rigid stand on an even floor: of everything the foot nearest to the centre of mass bears {@code
 * (1/2 + |ex|/a) (1/2 + |ey|/b)}, the centre of mass ex and ey from their middle, the feet a and b apart.
 *
 * @param middle between them
 * @param a from left to right, mm
 * @param b from front to back, mm
 */
public record FourFeet(Vec2 middle, double a, double b) {
    /** Of two that are not quite in line with each other their mean counts. */
    public static FourFeet of(List<Vec2> feet) {
        if (feet.size() != 4) {
            throw new IllegalArgumentException(feet.size() + " feet are not four.");
        }
        double left = mean(feet, Vec2::x, 0);
        double right = mean(feet, Vec2::x, 2);
        double front = mean(feet, Vec2::y, 0);
        double back = mean(feet, Vec2::y, 2);
        return new FourFeet(new Vec2((left + right) / 2, (front + back) / 2), right - left, back - front);
    }

    /** Share of everything on the foot that bears most; 1 where it would tip over it. */
    public double most(Vec2 centre) {
        var off = centre.minus(middle);
        return half(off.x(), a) * half(off.y(), b);
    }

    private static double half(double off, double apart) {
        return Math.min(1, 0.5 + Math.abs(off) / apart);
    }

    private static double mean(List<Vec2> feet, ToDoubleFunction<Vec2> way, int from) {
        return feet.stream()
                .sorted(Comparator.comparingDouble(way))
                .skip(from)
                .limit(2)
                .mapToDouble(way)
                .average()
                .orElseThrow();
    }
}
