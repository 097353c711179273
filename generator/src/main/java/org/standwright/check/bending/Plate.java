package org.standwright.check.bending;

import java.util.function.DoubleUnaryOperator;
import org.standwright.geom.Require;

/**
 * A rectangular plate on supports along all four edges, of one modulus, with Poisson's ratio 0.3.
 *
 * <p>Lévy's series over the short side b (Timoshenko and Woinowsky-Krieger, articles 30 and 34), each written as the
 * value of an endless strip and a correction that falls off with cosh α, α = m π a / (2 b), m = 1, 3, 5 …; D = E t³ / (12 (1
 * − ν²)). Reproduces the coefficients of Roark, table 11.4, case 1a. Holds for deflections up to half the thickness.
 *
 * @param longer a, mm
 * @param shorter b, mm
 * @param thickness t, mm
 * @param modulus E, N/mm²
 */
public record Plate(double longer, double shorter, double thickness, double modulus) {
    static final double POISSON = 0.3;

    /** Σ 1/m³ over odd m. */
    private static final double ODD_CUBES = 1.0517997902646449;

    /** Beyond it cosh α is over 1e20 even for a square. */
    private static final int LAST = 31;

    public Plate {
        Require.positive("longer side", longer, "plate");
        Require.positive("shorter side", shorter, "plate");
        Require.positive("thickness", thickness, "plate");
        Require.positive("modulus", modulus, "plate");
        if (shorter > longer) {
            throw new IllegalArgumentException("a plate's shorter side is " + shorter + " mm, but its longer one "
                    + longer + " mm. Change them over.");
        }
    }

    /** Deflection of the middle under an even load, mm: 0.00406 q b⁴ / D for a square, 5/384 for a strip. */
    public double uniform(double pressure) {
        double strip = 5.0 / 384;
        double correction = series(5, true, alpha -> -bracket(alpha)) * 4 / power(StrictMath.PI, 5);
        return (strip + correction) * pressure * power(shorter, 4) / rigidity();
    }

    /** Deflection under a load in the middle, mm: 0.0116 W b² / D for a square. */
    public double centre(double load) {
        double sum = ODD_CUBES + series(3, false, Plate::point);
        return sum / (2 * power(StrictMath.PI, 3)) * load * power(shorter, 2) / rigidity();
    }

    /** Greatest bending stress under an even load, N/mm²: across the short side, in the middle. */
    public double stress(double pressure) {
        double correction =
                series(3, true, alpha -> -bracket(alpha) + POISSON * curl(alpha)) * 4 / power(StrictMath.PI, 3);
        return 6 * (1.0 / 8 + correction) * pressure * power(shorter / thickness, 2);
    }

    /** Greatest reaction of an edge under an even load, N/mm: in the middle of the longer sides. */
    public double reaction(double pressure) {
        double correction =
                series(2, false, alpha -> -bracket(alpha) + (2 - POISSON) * curl(alpha)) * 4 / power(StrictMath.PI, 2);
        return (1.0 / 2 + correction) * pressure * shorter;
    }

    /** D, N·mm. */
    private double rigidity() {
        return modulus * power(thickness, 3) / (12 * (1 - POISSON * POISSON));
    }

    /** Σ ± f(α) / mᵖ over odd m; with alternating signs where they stand for the middle of the short side. */
    private double series(int exponent, boolean alternating, DoubleUnaryOperator term) {
        double sum = 0;
        for (int m = 1; m <= LAST; m += 2) {
            double sign = alternating && m % 4 == 3 ? -1 : 1;
            double alpha = m * StrictMath.PI * longer / (2 * shorter);
            sum += sign * term.applyAsDouble(alpha) / power(m, exponent);
        }
        return sum;
    }

    /** (α tanh α + 2) / (2 cosh α). */
    private static double bracket(double alpha) {
        return (alpha * StrictMath.tanh(alpha) + 2) / (2 * StrictMath.cosh(alpha));
    }

    /** α tanh α / (2 cosh α). */
    private static double curl(double alpha) {
        return alpha * StrictMath.tanh(alpha) / (2 * StrictMath.cosh(alpha));
    }

    /** tanh α − 1 − α / cosh² α. */
    private static double point(double alpha) {
        double cosh = StrictMath.cosh(alpha);
        return StrictMath.tanh(alpha) - 1 - alpha / cosh / cosh;
    }

    private static double power(double base, int exponent) {
        double power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= base;
        }
        return power;
    }
}
