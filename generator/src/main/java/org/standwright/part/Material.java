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
public record Material(
        String name, double thickness, double density, Grain grain, OptionalDouble barWidth, Colour colour) {
    /** Of wood that nobody gave a colour. */
    public static final Colour PLAIN = new Colour(0xd9, 0xb9, 0x82);

    public Material {
        Require.named("material", name);
        Require.positive("thickness", thickness, name);
        Require.positive("density", density, name);
        if (barWidth.isPresent()) {
            Require.positive("bar width", barWidth.getAsDouble(), name);
        }
    }

    /** A sheet good of a plain colour. */
    public Material(String name, double thickness, double density, Grain grain) {
        this(name, thickness, density, grain, OptionalDouble.empty(), PLAIN);
    }

    /** Bar stock of solid wood of a plain colour, its grain along it. */
    public static Material bar(String name, double width, double thickness, double density) {
        return new Material(name, thickness, density, Grain.ALONG_LENGTH, OptionalDouble.of(width), PLAIN);
    }

    /** The same in another colour. */
    public Material coloured(Colour other) {
        return new Material(name, thickness, density, grain, barWidth, other);
    }

    /** Whether lengths of it are cut from bars, not from sheets. */
    public boolean isBar() {
        return barWidth.isPresent();
    }
}
