package org.standwright.check.balance.statics;

import org.standwright.geom.Require;
import org.standwright.geom.Vec2;

/**
 * Where a foot may touch the floor: somewhere on a circle.
 *
 * @param centre of the circle, seen from above
 * @param radius of the circle, mm: the trail of a swivel caster, 0 for a foot that stays where it is
 */
public record Contact(Vec2 centre, double radius) {
    public Contact {
        Require.notNegative("radius", radius, "contact");
    }

    /** A foot that stays where it is. */
    public static Contact at(double x, double y) {
        return new Contact(new Vec2(x, y), 0);
    }

    /** How far it is sure to reach in a direction, mm: on a circle the point that lies farthest back counts. */
    double reach(Vec2 direction) {
        return direction.x() * centre.x() + direction.y() * centre.y() - radius;
    }
}
