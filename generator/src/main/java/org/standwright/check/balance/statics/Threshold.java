package org.standwright.check.balance.statics;

import java.util.List;
import org.standwright.geom.Grid;
import org.standwright.geom.Require;
import org.standwright.geom.Vec2;
import org.standwright.unit.Gravity;

/**
 * Rolling over a threshold: does the stand climb it, or tip over its leading wheels?
 *
 * <p>A wheel of radius r climbs an edge of height h when the level push is {@code k = √(2rh - h²) / (r - h)} times the
 * load on its axle: the edge's force goes through edge and axle. A push at the handle shifts weight onto that axle;
 * once all of it is there, more push tips. So of a weight W, which needs {@code k W}, the centre must lie farther
 * behind the axle than {@code k (H - r)}, with the handle at height H. Casters trail behind the way the stand rolls.
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
     * The share of one body in {@code b / (k (H - r))}: its weight times b against the push that it asks for times the
     * handle's height above the axles. Shares add up, so that of one ratio the height follows at which it tips.
     *
     * @param leading edge that the casters have while the stand rolls this way
     * @param handle height at which it is pushed, mm
     */
    public Moments of(Body body, TippingEdge leading, double handle) {
        double weight = body.mass() * Gravity.STANDARD;
        return new Moments(
                weight * leading.inside(body.centre()), pushPerLoad() * weight * Math.max(0, handle - wheel));
    }

    /** Height of a push at which the stand tips, mm, when at {@code handle} what holds is {@code ratio} times what tips. */
    public double tips(double ratio, double handle) {
        return wheel + ratio * (handle - wheel);
    }
}
