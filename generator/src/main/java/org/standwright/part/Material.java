package org.standwright.part;

import java.util.OptionalDouble;
import org.standwright.geom.Require;

/**
 * What a board or a bar is made of, as measured.
 *
 * @param thickness measured, mm; never the nominal one
 * @param density kg/m³
 * @param barWidth the other side of its section when it is bar stock, mm
 */
public record Material(String name, double thickness, double density, Grain grain, OptionalDouble barWidth) {
    public Material {
        Require.named("material", name);
        Require.positive("thickness", thickness, name);
        Require.positive("density", density, name);
        if (barWidth.isPresent()) {
            Require.positive("bar width", barWidth.getAsDouble(), name);
        }
    }

    /** A sheet good. */
    public Material(String name, double thickness, double density, Grain grain) {
        this(name, thickness, density, grain, OptionalDouble.empty());
    }

    /** Bar stock of solid wood, its grain along it. */
    public static Material bar(String name, double width, double thickness, double density) {
        return new Material(name, thickness, density, Grain.ALONG_LENGTH, OptionalDouble.of(width));
    }

    /** Whether lengths of it are cut from bars, not from sheets. */
    public boolean isBar() {
        return barWidth.isPresent();
    }
}
