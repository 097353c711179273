package org.standwright.geom;

/**
 * One side of a loop: straight, or an arc of a circle.
 *
 * @param bulge tangent of a quarter of the angle that the arc turns through, more than 0 where it turns left, 0 for a
 *     straight side, 1 for half a circle (the DXF reference's measure, as the documentation of ezdxf gives it)
 */
public record Bend(Vec2 from, Vec2 to, double bulge) {
    /** Bulge of an arc that turns left by so many radians. */
    public static double bulge(double angle) {
        return StrictMath.tan(angle / 4);
    }

    public boolean isArc() {
        return bulge != 0;
    }

    /** How far the arc turns, radians; 0 for a straight side, less than 0 to the right. */
    public double angle() {
        return 4 * StrictMath.atan(bulge);
    }

    /** Radius of the arc, mm: (c / 2) (1 + b²) / (2 |b|) on a chord c (ezdxf documentation). */
    public double radius() {
        return chord() / 2 * (1 + bulge * bulge) / (2 * Math.abs(bulge));
    }

    /** How far the arc stands off its chord, mm. */
    public double sagitta() {
        return Math.abs(bulge) * chord() / 2;
    }

    /** Centre of the arc. */
    public Vec2 centre() {
        var half = to.minus(from).times(0.5);
        double aside = (1 - bulge * bulge) / (2 * bulge);
        return from.plus(half).plus(new Vec2(-half.y(), half.x()).times(aside));
    }

    /** Length along it, mm. */
    public double length() {
        return isArc() ? radius() * Math.abs(angle()) : chord();
    }

    /** The point at a part of its length, 0 at its start and 1 at its end. */
    public Vec2 at(double part) {
        if (!isArc()) {
            return from.plus(to.minus(from).times(part));
        }
        var centre = centre();
        var arm = from.minus(centre);
        double turn = angle() * part;
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        return centre.plus(new Vec2(arm.x() * cos - arm.y() * sin, arm.x() * sin + arm.y() * cos));
    }

    /** Area between it and its chord, mm², more than 0 where it turns left. */
    double segment() {
        if (!isArc()) {
            return 0;
        }
        double r = radius();
        double angle = angle();
        return r * r / 2 * (angle - StrictMath.sin(angle));
    }

    private double chord() {
        return to.minus(from).length();
    }
}
