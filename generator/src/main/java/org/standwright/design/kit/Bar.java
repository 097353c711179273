package org.standwright.design.kit;

import java.util.Optional;
import org.standwright.part.Colour;
import org.standwright.part.Material;
import org.standwright.unit.Money;

/**
 * Bar stock: a strip of solid wood as it is bought, from which lengths are cut.
 *
 * @param width of its section, mm
 * @param thickness of its section, mm
 * @param density kg/m³
 * @param length as bought, mm
 * @param price of one bar
 */
public record Bar(
        String name,
        double width,
        double thickness,
        double density,
        Colour colour,
        double length,
        Optional<Money> price) {

    /** Of a plain colour. */
    public Bar(String name, double width, double thickness, double density, double length, Optional<Money> price) {
        this(name, width, thickness, density, Material.PLAIN, length, price);
    }

    /** What its pieces are made of. */
    public Material material() {
        return Material.bar(name, width, thickness, density).coloured(colour);
    }
}
