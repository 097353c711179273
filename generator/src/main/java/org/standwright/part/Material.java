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
        String name,
        double thickness,
        double density,
        Grain grain,
        OptionalDouble barWidth,
        Colour colour,
        Elasticity elasticity) {
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

    /** Plywood of a plain colour. */
    public Material(String name, double thickness, double density, Grain grain) {
        this(name, thickness, density, grain, OptionalDouble.empty(), PLAIN, Board.PLYWOOD.usual());
    }

    /** Bar stock of solid wood of a plain colour, its grain along it. */
    public static Material bar(String name, double width, double thickness, double density) {
        return new Material(
                name,
                thickness,
                density,
                Grain.ALONG_LENGTH,
                OptionalDouble.of(width),
                PLAIN,
                Board.SOLID_WOOD.usual());
    }

    /** The same in another colour. */
    public Material coloured(Colour other) {
        return new Material(name, thickness, density, grain, barWidth, other, elasticity);
    }

    /** The same, as stiff as this. */
    public Material stiff(Elasticity other) {
        return new Material(name, thickness, density, grain, barWidth, colour, other);
    }

    /** The same with its grain shown or not. */
    public Material grained(Grain other) {
        return new Material(name, thickness, density, other, barWidth, colour, elasticity);
    }

    /** The same in another thickness. */
    public Material thick(double other) {
        return new Material(name, other, density, grain, barWidth, colour, elasticity);
    }

    /** Whether lengths of it are cut from bars, not from sheets. */
    public boolean isBar() {
        return barWidth.isPresent();
    }
}
