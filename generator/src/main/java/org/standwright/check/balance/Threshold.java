package org.standwright.check.balance;

import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Require;
import org.standwright.geom.Vec2;

/**
 * Rolling over a threshold: the push that lifts the leading wheels over it, and how far it tips the stand.
 *
 * <p>A wheel of radius r climbs an edge of height h when the push's moment about that edge, {@code F (r - h)}, equals that
 * of the load on its axle, {@code L √(2rh - h²)}. Casters trail behind the way the stand rolls.
 *
 * @param height of the threshold, mm
 * @param wheel radius of the leading wheels, mm
 */
public record Threshold(double height, double wheel) {
    public Threshold {
        Require.notNegative("height", height, "threshold");
        Require.positive("radius", wheel, "wheel");
    }

    /** Whether a wheel can be pushed over it at all. */
    public boolean isPassable() {
        return Grid.less(height, wheel);
    }

    /** Level push over load on the axle; throws where it is not passable. */
    public double pushPerLoad() {
        if (!isPassable()) {
            throw new IllegalArgumentException("a wheel of radius " + wheel + " mm cannot be pushed over " + height
                    + " mm; ask isPassable first.");
        }
        return Math.sqrt(2 * wheel * height - height * height) / (wheel - height);
    }

    /** The line over which the stand tips when it is stopped while it rolls this way, a unit vector. */
    public static TippingEdge edge(List<Contact> casters, Vec2 ahead) {
        return new TippingEdge(
                ahead,
                casters.stream()
                        .mapToDouble(caster -> caster.reach(ahead))
                        .max()
                        .orElseThrow());
    }

    /**
     * What one body's weight does to a stand pushed over it: it holds about the leading wheels, and the share of it that
     * lies on their axle asks for a push at the handle that tips.
     *
     * @param leading edge that the casters have while the stand rolls this way
     * @param handle height at which it is pushed, mm
     */
    public Moments of(Body body, TippingEdge leading, List<Contact> casters, double handle) {
        return leading.of(body).plus(leading.push(axleLoad(body, leading, casters) * pushPerLoad(), handle));
    }

    /** The part of a body's weight that the leading wheels carry, N. */
    public double axleLoad(Body body, TippingEdge leading, List<Contact> casters) {
        double rear = casters.stream()
                .mapToDouble(caster -> caster.reach(leading.normal()))
                .min()
                .orElseThrow();
        double wheelbase = leading.offset() - rear;
        double share = 1 - leading.inside(body.centre()) / wheelbase;
        return Math.max(0, body.mass() * TippingEdge.GRAVITY * share);
    }
}
