package org.standwright.solid.exact;

import org.standwright.geom.Vec3;

/** Angles round an axis, radians, counter-clockwise seen against it. */
final class Turning {
    private static final double WHOLE = 2 * Math.PI;

    private Turning() {}

    /** From one arm to another, more than -π and at most π. */
    static double between(Vec3 axis, Vec3 from, Vec3 to) {
        return StrictMath.atan2(axis.dot(from.cross(to)), from.dot(to));
    }

    /** From one arm to another the left way round, 0 to 2 π. */
    static double left(Vec3 axis, Vec3 from, Vec3 to) {
        double turn = between(axis, from, to);
        return turn < 0 ? turn + WHOLE : turn;
    }

    /** How far a chain of sides turns round an axis in all. */
    static double of(Model model, Round round, int[] sides) {
        double turn = 0;
        for (int side : sides) {
            turn += between(round.axis(), round.arm(model.from(side)), round.arm(model.to(side)));
        }
        return turn;
    }

    /** Whether a closed chain goes round the axis. */
    static boolean windsRound(Model model, Round round, int[] loop) {
        return Math.abs(of(model, round, loop)) > Math.PI;
    }
}
