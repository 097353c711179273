package org.standwright.file;

import java.util.Optional;
import org.standwright.part.Board;
import org.standwright.part.Colour;
import org.standwright.part.Elasticity;
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
        Board board,
        Optional<Stiffness> stiffness,
        double length,
        double width,
        Optional<Nominal> nominal,
        Optional<Money> price) {

    /** Moduli of elasticity, N/mm². */
    record Stiffness(double along, double across) {}

    SheetGood toSheetGood() {
        var material = new Material(name, thickness, density, grain)
                .coloured(colour)
                .stiff(stiffness
                        .map(given -> new Elasticity(board, given.along(), given.across()))
                        .orElseGet(board::usual));
        return new SheetGood(material, length, width, nominal, price);
    }
}
