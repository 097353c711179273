package org.standwright.packet.wall;

import org.standwright.geom.Grid;

/** An angle in words. */
final class Degrees {
    private Degrees() {}

    /** '45°', '37.5°'. */
    static String of(double degrees) {
        return Grid.same(degrees, Math.rint(degrees)) ? Math.round(degrees) + "°" : degrees + "°";
    }
}
