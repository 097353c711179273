package org.standwright.solid.exact;

import java.util.List;
import org.standwright.geom.Vec3;

/**
 * Newton's method for a point on several surfaces: fewer than three leave it free to stay close, more than three are met
 * in the least squares. A touch of damping makes the least step of many (Levenberg and Marquardt's form).
 */
final class Newton {
    private static final int MOST_STEPS = 40;
    private static final double CLOSE = 1e-13;
    private static final double DAMPING = 1e-9;

    private final List<? extends Constraint> all;

    Newton(List<? extends Constraint> all) {
        this.all = all;
    }

    Vec3 from(Vec3 start) {
        var at = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            var step = step(at);
            at = at.minus(step);
            if (step.length() < CLOSE) {
                return at;
            }
        }
        return at;
    }

    private Vec3 step(Vec3 at) {
        double xx = DAMPING;
        double yy = DAMPING;
        double zz = DAMPING;
        double xy = 0;
        double yz = 0;
        double zx = 0;
        var right = Vec3.ZERO;
        for (var one : all) {
            var n = one.normal(at);
            xx += n.x() * n.x();
            yy += n.y() * n.y();
            zz += n.z() * n.z();
            xy += n.x() * n.y();
            yz += n.y() * n.z();
            zx += n.z() * n.x();
            right = right.plus(n.times(one.distance(at)));
        }
        return solved(new Vec3(xx, xy, zx), new Vec3(xy, yy, yz), new Vec3(zx, yz, zz), right);
    }

    /** By Cramer's rule, for a symmetric matrix of these rows. */
    private static Vec3 solved(Vec3 a, Vec3 b, Vec3 c, Vec3 right) {
        double determinant = a.dot(b.cross(c));
        return b.cross(c)
                .times(right.x())
                .plus(c.cross(a).times(right.y()))
                .plus(a.cross(b).times(right.z()))
                .times(1 / determinant);
    }
}
