package org.standwright.part;

import org.standwright.geom.Require;

/**
 * What covers one edge of a part: a tape or a strip of solid wood.
 *
 * @param thickness that it adds, mm
 */
public record Banding(String name, double thickness) {
    public Banding {
        Require.named("banding", name);
        Require.positive("thickness", thickness, name);
    }
}
