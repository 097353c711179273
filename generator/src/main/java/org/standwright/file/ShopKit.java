package org.standwright.file;

import org.standwright.unit.Units;

/** Names of the built-in presets that a first design is made with. */
record ShopKit(
        String board,
        String thin,
        String box,
        String slide,
        String pull,
        String edging,
        String panelScrew,
        String slideScrew,
        String leveler,
        String kerf,
        String trim) {

    static ShopKit of(Units unit) {
        return unit == Units.MM
                ? new ShopKit(
                        "birch-18",
                        "birch-6.5",
                        "birch-12",
                        "slide-45-full",
                        "pull-96",
                        "tape-0.6",
                        "screw-4",
                        "slide-screw-4",
                        "leveler-m10",
                        "3.2 mm",
                        "5 mm")
                : new ShopKit(
                        "ply-23-32",
                        "ply-1-4",
                        "ply-15-32",
                        "slide-1-3-4-full-inch",
                        "pull-3-inch",
                        "tape-0.024-inch",
                        "screw-8",
                        "slide-screw-6",
                        "leveler-m10",
                        "1/8 in",
                        "1/4 in");
    }
}
