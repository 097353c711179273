package org.standwright.design.stand;

import java.util.HashSet;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.NamedParts;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Material;

/** What a design says about its boards and their cutting must be about parts that it has. */
final class StockFit {
    private StockFit() {}

    static void check(StandDesign design, List<PlacedPart> all) {
        var names = new NamedParts(all);
        var anyGrain = design.cutting().anyGrain();
        for (int i = 0; i < anyGrain.size(); i++) {
            names.require("/cutting/anyGrain/" + i, anyGrain.get(i));
        }
        var used = all.stream()
                .map(placed -> placed.part().material())
                .filter(material -> !material.isBar())
                .distinct()
                .toList();
        var called = new HashSet<String>();
        for (int i = 0; i < design.stock().sheets().size(); i++) {
            var field = "/stock/sheets/" + i;
            var board = design.stock().sheets().get(i).board(design.unit());
            requireUsed(field + "/sheet", board.material(), used);
            requireThick(field + "/thickness", board, design);
            requireOneCurrency(field + "/price", board, design.boards());
            if (!called.add(board.name())) {
                throw new ImpossibleDesignException(
                        field,
                        "Boards called '" + board.name() + "' stand in the stock twice.",
                        List.of("Write them once with their count, or give these a name of their own."));
            }
        }
    }

    /** A board of another thickness would move every height and width that its parts decide. */
    private static void requireThick(String field, StockSheet board, StandDesign design) {
        double fit = design.carcass().fit();
        if (!board.mates(fit)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    field,
                    "Board '" + board.name() + "' is " + Exact.length(units, board.thickness())
                            + " thick, but the design counts on "
                            + Exact.length(units, board.material().thickness()) + " and takes boards between "
                            + Exact.length(units, board.thinnest(fit)) + " and "
                            + Exact.length(units, board.thickest(fit))
                            + ", those that go into its dado and hold there.",
                    List.of("Leave the board out, or give it to parts of another material."));
        }
    }

    /** Boards of one material are compared by their prices. */
    private static void requireOneCurrency(String field, StockSheet board, List<StockSheet> all) {
        board.price()
                .ifPresent(price -> all.stream()
                        .filter(other -> other.material().equals(board.material()))
                        .flatMap(other -> other.price().stream())
                        .filter(other -> !other.currency().equals(price.currency()))
                        .findFirst()
                        .ifPresent(other -> {
                            throw new ImpossibleDesignException(
                                    field,
                                    "Boards of " + board.material().name() + " have prices in two currencies, "
                                            + price.currency() + " and " + other.currency()
                                            + ", which cannot be compared.",
                                    List.of("Write all of them in one currency."));
                        }));
    }

    private static void requireUsed(String field, Material material, List<Material> used) {
        if (!used.contains(material)) {
            var names = used.stream().map(Material::name).toList();
            boolean isOther = names.contains(material.name());
            throw new ImpossibleDesignException(
                    field,
                    "No part is cut from " + material.name() + (isOther ? " as it is described here." : "."),
                    List.of(
                            isOther
                                    ? "Name the sheet as the parts' sheet is named, and write what was measured beside it, as \"thickness\" of this entry."
                                    : "Name one of the sheets that parts are cut from: '" + String.join("', '", names)
                                            + "'."));
        }
    }
}
