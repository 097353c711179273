package org.standwright.geom;

/** One of the six directions along the axes of a frame. */
public enum Axis {
    X_PLUS(new Vec3(1, 0, 0)),
    X_MINUS(new Vec3(-1, 0, 0)),
    Y_PLUS(new Vec3(0, 1, 0)),
    Y_MINUS(new Vec3(0, -1, 0)),
    Z_PLUS(new Vec3(0, 0, 1)),
    Z_MINUS(new Vec3(0, 0, -1));

    private final Vec3 unit;

    Axis(Vec3 unit) {
        this.unit = unit;
    }

    /** Length 1, so its components are -1, 0 or 1. */
    public Vec3 unit() {
        return unit;
    }

    /** The direction square to this one and another that makes a right-handed frame with them, in this order. */
    public Axis cross(Axis other) {
        var a = unit;
        var b = other.unit;
        var c = new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
        for (var axis : values()) {
            if (axis.dot(c) > 0) {
                return axis;
            }
        }
        throw new IllegalArgumentException("axes " + this + " and " + other + " are not square.");
    }

    public Axis opposite() {
        return values()[ordinal() ^ 1];
    }

    private double dot(Vec3 v) {
        return unit.x() * v.x() + unit.y() * v.y() + unit.z() * v.z();
    }
}
