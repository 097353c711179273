package org.standwright.geom;

/** A point or a shift in a plane, mm. */
public record Vec2(double x, double y) {
    public static final Vec2 ZERO = new Vec2(0, 0);

    public Vec2 plus(Vec2 other) {
        return new Vec2(x + other.x, y + other.y);
    }

    public Vec2 minus(Vec2 other) {
        return new Vec2(x - other.x, y - other.y);
    }

    public Vec2 times(double factor) {
        return new Vec2(x * factor, y * factor);
    }

    /** Twice the area of the triangle that this and {@code other} span, more than 0 when {@code other} turns left. */
    public double cross(Vec2 other) {
        return x * other.y - y * other.x;
    }

    public double length() {
        return Math.sqrt(x * x + y * y);
    }
}
