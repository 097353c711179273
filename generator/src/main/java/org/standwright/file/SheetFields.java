package org.standwright.file;

import java.util.Optional;
import org.standwright.part.Colour;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Nominal;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/** A sheet as a file writes it: its material's fields beside its own. */
record SheetFields(
        String name,
        double thickness,
        double density,
        Grain grain,
        Colour colour,
        double length,
        double width,
        Optional<Nominal> nominal,
        Optional<Money> price) {

    SheetGood toSheetGood() {
        return new SheetGood(
                new Material(name, thickness, density, grain).coloured(colour), length, width, nominal, price);
    }
}
