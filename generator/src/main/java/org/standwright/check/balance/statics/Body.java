package org.standwright.check.balance.statics;

import org.standwright.geom.Require;
import org.standwright.geom.Vec3;

/**
 * Something that weighs.
 *
 * @param mass kg
 * @param centre of its mass, mm
 */
public record Body(double mass, Vec3 centre) {
    public Body {
        Require.notNegative("mass", mass, "body");
    }
}
