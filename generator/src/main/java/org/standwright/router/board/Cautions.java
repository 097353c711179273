package org.standwright.router.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standwright.design.kit.Router;
import org.standwright.geom.Grid;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Mm;
import org.standwright.router.machining.Sizes;

/** What can go wrong with one board: with how it is turned, with the bit, and with what each part is held by. */
record Cautions(RoutedSheet sheet, Router router, Sizes sizes, List<Worked> worked, Dowels dowels) {
    /** How many of its diameters a bit reaches down; our own rule after common practice, no source. */
    private static final double REACH = 5;

    List<String> lines() {
        var lines = new ArrayList<String>();
        if (!dowels.places().isEmpty()) {
            lines.addAll(ofDowels());
        }
        lines.addAll(ofBit());
        lines.addAll(ofParts());
        return lines;
    }

    private List<String> ofDowels() {
        var lines = new ArrayList<String>();
        if (!dowels.areFarApart(sheet)) {
            lines.add("the dowels are less than half of the board's length apart: check the far end by its edge too");
        }
        if (!dowels.tellTheWay()) {
            lines.add(
                    "the dowels lie point-symmetric, so that the board drops onto them turned end over end too: mark one"
                            + " end, and keep it at the same side");
        }
        return lines;
    }

    private List<String> ofBit() {
        double deepest = worked.stream()
                .flatMap(Worked::above)
                .filter(placing -> placing.work().kind() == Kind.OUTLINE)
                .mapToDouble(placing -> placing.work().depth().orElse(0))
                .max()
                .orElse(0);
        return Grid.less(REACH * router.bit(), deepest)
                ? List.of("outlines are " + Mm.of(deepest) + " mm deep, more than " + Mm.of(REACH)
                        + " times the bit of "
                        + sizes.bore(router.bit()) + ": see that its cutting edge is that long, and cut in shallow"
                        + " passes, or take a wider bit")
                : List.of();
    }

    /** Each caution once, with all parts that it holds for. */
    private List<String> ofParts() {
        Map<String, Set<String>> names = new LinkedHashMap<>();
        for (var one : worked) {
            for (var caution : one.machining().cautions()) {
                names.computeIfAbsent(caution, key -> new LinkedHashSet<>()).add(one.name());
            }
        }
        var lines = new ArrayList<String>();
        names.forEach((caution, all) -> lines.add(String.join(", ", all) + ": " + caution));
        return lines;
    }
}
