package org.standwright.cli;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.make.Product;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.YieldShares;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.MaterialPlan;
import org.standwright.unit.Units;

/** One line on what a design comes to, and one on the sheets of each material. */
final class Summary {
    private Summary() {}

    static String of(Product product) {
        return Stream.of(
                        Stream.of(whole(product)),
                        product.plan().materials().stream().map(material -> sheets(material, product)),
                        product.routed().stream().map(plan -> routed(plan, product.units())))
                .flatMap(lines -> lines)
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

    /** 'boards for the router: 3 of birch 18, 1 of birch 6.5; parts lie 7.9 mm apart.' */
    private static String routed(RouterPlan plan, Units units) {
        var boards = plan.materials().stream()
                .map(material ->
                        material.sheets().size() + " of " + material.material().name())
                .collect(Collectors.joining(", "));
        return "  boards for the router: " + boards + "; parts lie "
                + units.length(plan.router().spacing()) + " apart.";
    }
}
