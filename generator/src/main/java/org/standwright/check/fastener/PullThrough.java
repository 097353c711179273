package org.standwright.check.fastener;

import java.util.OptionalDouble;
import org.standwright.geom.Grid;
import org.standwright.geom.Require;

/**
 * What a round head holds before it is pulled through a wooden side member.
 *
 * <p>690 π DH G² t up to a thickness of 2.5 DH, 1725 π DH² G² beyond, lbf and inches (NDS 2018 Eq. 12.2-6a and b, as
 * quoted). For sides of 5/16 to 1-1/2 in, as its table goes. Flat countersunk heads are outside the rule: not rated.
 */
public final class PullThrough {
    private static final double THINNEST = 0.3125;
    private static final double THICKEST = 1.5;

    private PullThrough() {}

    /**
     * Allowable under a load of ten years, N; empty outside the thicknesses that the rule is for.
     *
     * @param head diameter of the round head, mm
     * @param side thickness of the side member, mm
     */
    public static OptionalDouble allowable(double head, double gravity, double side) {
        Require.positive("head", head, "pull-through");
        if (Grid.less(side, THINNEST * Customary.INCH) || Grid.less(THICKEST * Customary.INCH, side)) {
            return OptionalDouble.empty();
        }
        double inches = head / Customary.INCH;
        double counted = Math.min(side / Customary.INCH, 2.5 * inches);
        return OptionalDouble.of(690 * Math.PI * inches * gravity * gravity * counted * Customary.POUND);
    }
}
