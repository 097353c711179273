package org.standwright.design.stand;

import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;
import org.standwright.part.Grain;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

/** Every part must come out of one sheet of its material. */
public final class SheetFit {
    private SheetFit() {}

    /** Each part within a sheet of its own material. */
    static void check(StandDesign design, List<Group> groups) {
        for (var group : groups) {
            for (var placed : group.parts()) {
                var part = placed.part();
                if (part.material().isBar()) {
                    onBar(design, placed.label(), part);
                    continue;
                }
                var sheet = design.sheets().stream()
                        .filter(candidate -> candidate.material().equals(part.material()))
                        .findFirst()
                        .orElseThrow();
                fits(design, placed.label(), part, sheet);
            }
        }
    }

    /** The only bars in a design are what its drawers run on. */
    private static void onBar(StandDesign design, String label, Part part) {
        if (design.drawers().hang() instanceof Hang.Runners runners
                && Grid.less(runners.bar().length(), part.roughLength())) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/drawers/hang/bar",
                    "Part '" + label + "' is cut " + units.length(part.roughLength()) + " long, but a "
                            + runners.bar().name() + " is "
                            + units.length(runners.bar().length()) + " long.",
                    List.of("Use a bar " + Exact.up(units, part.roughLength())
                            + " long or more, or make the plan less deep."));
        }
    }

    /** One board of a material: two that differ only in size or price could not be told apart in the shop. */
    static void oneBoardEach(StandDesign design) {
        var named = new LinkedHashMap<String, SheetGood>();
        named.put("/carcass/sheet", design.carcass().sheet());
        named.put("/carcass/back", design.carcass().back());
        named.put("/worktop/sheet", design.worktop().sheet());
        named.put("/drawers/box", design.drawers().box());
        named.put("/drawers/bottom", design.drawers().bottom());
        named.put("/drawers/front", design.drawers().front());
        named.forEach((field, sheet) -> named.values().stream()
                .filter(other -> other.material().equals(sheet.material()) && !other.equals(sheet))
                .findFirst()
                .ifPresent(other -> {
                    throw new ImpossibleDesignException(
                            field,
                            "Its board has the name of another one in this design, "
                                    + sheet.material().name() + ", but not its size, price or nominal thickness.",
                            List.of("Name the same board everywhere, or give this one a name of its own."));
                }));
    }

    private static void fits(StandDesign design, String label, Part part, SheetGood sheet) {
        double length = sheet.length() - 2 * design.saw().trim();
        double width = sheet.width() - 2 * design.saw().trim();
        boolean straight = within(part, length, width);
        boolean turned = sheet.material().grain() == Grain.NONE && within(part, width, length);
        if (!straight && !turned) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/plan",
                    "Part '" + label + "' is cut " + units.length(part.roughLength()) + " x "
                            + units.length(part.roughWidth()) + ", larger than a sheet of "
                            + sheet.material().name() + " after trimming (" + units.length(length) + " x "
                            + units.length(width) + ").",
                    List.of("Make the plan smaller, or use a larger sheet."));
        }
    }

    private static boolean within(Part part, double length, double width) {
        return !Grid.less(length, part.roughLength()) && !Grid.less(width, part.roughWidth());
    }
}
