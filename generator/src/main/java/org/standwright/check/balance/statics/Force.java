package org.standwright.check.balance.statics;

import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/**
 * A push or a pull on a stand.
 *
 * @param at where, mm
 * @param newtons along x, y and z, N
 */
public record Force(Vec3 at, Vec3 newtons) {
    public static Force down(double newtons, Vec3 at) {
        return new Force(at, new Vec3(0, 0, -newtons));
    }

    /** @param direction a unit vector */
    public static Force level(double newtons, Vec2 direction, Vec3 at) {
        return new Force(at, new Vec3(newtons * direction.x(), newtons * direction.y(), 0));
    }
}
