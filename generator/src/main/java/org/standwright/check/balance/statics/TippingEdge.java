package org.standwright.check.balance.statics;

import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.unit.Gravity;

/**
 * A line on the floor over which a stand tips.
 *
 * <p>The moment of a downward force about it is the force times its distance from the line, that of a level force the
 * part of it across the line times its height; downward and level parts of one force count apart.
 *
 * @param normal unit vector across the line, the way the stand falls
 * @param offset of the line from the origin along {@code normal}, mm
 */
public record TippingEdge(Vec2 normal, double offset) {
    /** How far a point lies on the standing side of the line, mm; less than 0 beyond it. */
    public double inside(Vec3 point) {
        return offset - normal.x() * point.x() - normal.y() * point.y();
    }

    /** What a body's weight does on a level floor. */
    public Moments of(Body body) {
        return Moments.restoring(body.mass() * Gravity.STANDARD * inside(body.centre()));
    }

    /**
     * What a body's weight does on a floor that falls towards this edge.
     *
     * @param slope of the floor, degrees
     */
    public Moments of(Body body, double slope) {
        double angle = StrictMath.toRadians(slope);
        var weight = new Vec2(normal.x(), normal.y()).times(body.mass() * Gravity.STANDARD * StrictMath.sin(angle));
        double down = -body.mass() * Gravity.STANDARD * StrictMath.cos(angle);
        return of(new Force(body.centre(), new Vec3(weight.x(), weight.y(), down)));
    }

    public Moments of(Force force) {
        var newtons = force.newtons();
        double across = normal.x() * newtons.x() + normal.y() * newtons.y();
        return Moments.restoring(-newtons.z() * inside(force.at()))
                .plus(Moments.restoring(-across * force.at().z()));
    }

    /** A level force towards this edge's outside, at a height. */
    public Moments push(double newtons, double height) {
        return Moments.restoring(-newtons * height);
    }
}
