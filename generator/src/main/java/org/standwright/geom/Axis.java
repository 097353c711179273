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
}
