package org.standwright.check.wall.statics;

import java.util.OptionalDouble;
import org.standwright.check.fastener.PullThrough;

/**
 * What a screw goes through before it holds: a strip of plywood and perhaps plasterboard, which counts as a gap.
 *
 * @param thickness of the plywood, mm
 * @param gravity its specific gravity
 * @param gap to the wood that holds the screw, mm
 * @param head diameter of a round head or of a washer under it, mm; empty for a countersunk head, which is not rated
 */
public record ScrewedThrough(double thickness, double gravity, double gap, OptionalDouble head) {
    public ScrewedThrough {
        Given.positive("thickness of what the screw goes through", thickness, "mm");
        Given.gravity("what the screw goes through", gravity);
        Given.notNegative("gap behind the strip", gap, "mm");
        head.ifPresent(diameter -> Given.positive("diameter of the head", diameter, "mm"));
    }

    public static ScrewedThrough countersunk(double thickness, double gravity, double gap) {
        return new ScrewedThrough(thickness, gravity, gap, OptionalDouble.empty());
    }

    public static ScrewedThrough roundHead(double thickness, double gravity, double gap, double head) {
        return new ScrewedThrough(thickness, gravity, gap, OptionalDouble.of(head));
    }

    /** All that lies before the wood that holds it, mm. */
    public double depth() {
        return thickness + gap;
    }

    /** Under a load of ten years, N; empty for a countersunk head and for a thickness that the rule is not for. */
    OptionalDouble pullThrough() {
        return head.isPresent()
                ? PullThrough.allowable(head.getAsDouble(), gravity, thickness)
                : OptionalDouble.empty();
    }
}
