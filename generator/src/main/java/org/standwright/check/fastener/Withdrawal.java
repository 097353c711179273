package org.standwright.check.fastener;

import org.standwright.geom.Grid;
import org.standwright.geom.Require;

/**
 * What a fastener holds against being drawn straight out of the side grain of wood, or the face of plywood.
 *
 * <p>Allowable, lbf per inch: wood screw 2850 G² D, lag screw 1800 G^1.5 D^0.75, nail 1380 G^2.5 D (NDS 2018 Eq. 12.2-1
 * to 12.2-3, confirmed). Ultimate, about 5.5 times as much: 15,700, 8,100 and 7,850 in their place (Wood Handbook
 * chapter 8, quoted by a secondary source). Counted is the thread within the wood, of a wood screw with its tip, of a lag
 * without; of a nail all of it.
 *
 * @param gravity specific gravity of the wood that holds it
 */
public record Withdrawal(Fastener fastener, double gravity) {
    public Withdrawal {
        if (!(gravity > 0 && gravity < 1.5)) {
            throw new IllegalArgumentException("specific gravity is " + gravity + ", but must lie between 0 and 1.5.");
        }
    }

    /** Allowable for each mm of penetration, under a load of ten years, N/mm. */
    public double perMm() {
        return perMm(fastener.kind().allowable());
    }

    /** What draws it out, on average, for each mm of penetration, N/mm. Never to be designed with. */
    public double ultimatePerMm() {
        return perMm(fastener.kind().ultimate());
    }

    /**
     * Allowable, N; 0 with less than the least penetration: 6 D of screws and nails, 4 D of lags (NDS, as quoted).
     *
     * @param penetration as counted, mm
     */
    public double allowable(double penetration, LoadDuration duration) {
        Require.notNegative("penetration", penetration, "withdrawal");
        return Grid.less(penetration, fastener.leastPenetration()) ? 0 : perMm() * penetration * duration.factor();
    }

    /** The same in end grain, N: 0 for wood screws and nails, which are not rated there, 3/4 for lags. */
    public double allowableInEndGrain(double penetration, LoadDuration duration) {
        return fastener.kind().inEndGrain() * allowable(penetration, duration);
    }

    private double perMm(double coefficient) {
        var kind = fastener.kind();
        return coefficient
                * StrictMath.pow(gravity, kind.ofGravity())
                * StrictMath.pow(fastener.diameter() / Customary.INCH, kind.ofDiameter())
                * Customary.POUND_PER_INCH;
    }
}
