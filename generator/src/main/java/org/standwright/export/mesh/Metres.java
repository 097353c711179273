package org.standwright.export.mesh;

import java.math.BigDecimal;
import org.standwright.geom.Vec3;

/** The frame of a GLB: metres, x right, y up, z towards the person. */
final class Metres {
    private static final int PER_MM = 1024;
    /** 1/1024 mm in steps of 10^-13 m. */
    private static final long OF_A_1024TH = 9_765_625;

    private static final int PLACES = 13;

    private Metres() {}

    /** Turned, not yet scaled. */
    static Vec3 turned(Vec3 v) {
        return new Vec3(v.x(), v.z(), -v.y());
    }

    /** The float next to it; adding 0 makes -0 a plain 0. */
    static float nearest(double mm) {
        return (float) (mm / 1000) + 0f;
    }

    /** A length on the 1/1024 mm grid, in full. */
    static BigDecimal exact(double mm) {
        return BigDecimal.valueOf(Math.round(mm * PER_MM) * OF_A_1024TH, PLACES).stripTrailingZeros();
    }
}
