package org.standwright.cli;

import org.standwright.make.Product;

/** One line on what a stand comes to. */
final class Summary {
    private Summary() {}

    static String of(Product product) {
        var units = product.stand().design().unit();
        int sheets = product.plan().materials().stream()
                .mapToInt(material -> material.sheets().size())
                .sum();
        return product.stand().design().name() + ": "
                + product.solids().solids().size() + " parts from " + sheets + (sheets == 1 ? " sheet, " : " sheets, ")
                + units.mass(product.solids().mass()) + " of wood.";
    }
}
