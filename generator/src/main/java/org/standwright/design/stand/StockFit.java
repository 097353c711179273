package org.standwright.design.stand;

import java.util.HashSet;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.NamedParts;
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
            if (!called.add(board.name())) {
                throw new ImpossibleDesignException(
                        field,
                        "Boards called '" + board.name() + "' stand in the stock twice.",
                        List.of("Write them once with their count, or give these a name of their own."));
            }
        }
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
