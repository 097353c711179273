package org.standwright.part;

import java.util.Optional;
import org.standwright.geom.Require;
import org.standwright.unit.Money;

/**
 * A board as it is bought; its grain runs along its length.
 *
 * @param length along the grain, mm
 * @param width across the grain, mm
 * @param nominal what it is sold as; the material's thickness is the measured one
 */
public record SheetGood(
        Material material, double length, double width, Optional<Nominal> nominal, Optional<Money> price) {
    public SheetGood {
        Require.positive("sheet length", length, material.name());
        Require.positive("sheet width", width, material.name());
    }

    /** A board of the same size and price, of another material. */
    public SheetGood of(Material other) {
        return new SheetGood(other, length, width, nominal, price);
    }

    /** Mass of one whole board, kg. */
    public double mass() {
        return length * width * material.thickness() * 1e-9 * material.density();
    }
}
