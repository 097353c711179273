package org.standwright.cli;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.make.Product;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.YieldShares;
import org.standwright.sheet.MaterialPlan;

/** One line on what a design comes to, and one on the sheets of each material. */
final class Summary {
    private Summary() {}

    static String of(Product product) {
        return Stream.concat(
                        Stream.of(whole(product)),
                        product.plan().materials().stream().map(material -> sheets(material, product)))
                .collect(Collectors.joining("\n"));
    }

    private static String whole(Product product) {
        int sheets = product.plan().materials().stream()
                .mapToInt(material -> material.sheets().size())
                .sum();
        return product.furniture().design().name() + ": "
                + product.solids().solids().size() + " parts from " + sheets + (sheets == 1 ? " sheet, " : " sheets, ")
                + product.units().mass(product.solids().mass()) + " of wood.";
    }

    /** 'birch 18: 3 sheets; proved minimal; 78.4 % of them become parts.' */
    private static String sheets(MaterialPlan material, Product product) {
        return "  " + material.material().name() + ": " + ProofWords.of(material, product.units()) + "; "
                + YieldShares.parts(material.areas()) + " become parts.";
    }
}
