package org.standwright.design.carcass;

/**
 * A side or a partition.
 *
 * @param x its left face in the assembly, mm
 * @param z0 upper face of the level that it stands on, a side's lower end, mm
 * @param z1 lower face of the level above it, a side's upper end, mm
 */
record Upright(String label, Kind kind, double x, double z0, double z1) {
    enum Kind {
        LEFT_SIDE,
        RIGHT_SIDE,
        /** Between two bays of the carcass. */
        PARTITION,
        /** Between two bays within a bay. */
        NESTED;

        boolean isSide() {
            return this == LEFT_SIDE || this == RIGHT_SIDE;
        }
    }
}
