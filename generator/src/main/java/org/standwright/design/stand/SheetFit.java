package org.standwright.design.stand;

import java.util.HashSet;
import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

/** Every part must come out of one sheet of its material. */
final class SheetFit {
    private SheetFit() {}

    static void check(StandDesign design, List<Group> groups) {
        oneSizeEach(design);
        for (var group : groups) {
            for (var placed : group.parts()) {
                var part = placed.part();
                var sheet = design.sheets().stream()
                        .filter(candidate -> candidate.material().equals(part.material()))
                        .findFirst()
                        .orElseThrow();
                fits(design, placed.label(), part, sheet);
            }
        }
    }

    private static void oneSizeEach(StandDesign design) {
        var seen = new HashSet<Material>();
        for (var sheet : design.sheets()) {
            if (!seen.add(sheet.material())) {
                throw new ImpossibleDesignException(
                        "",
                        "The design names two boards of " + sheet.material().name()
                                + " that differ in size, price or nominal thickness.",
                        List.of("Name the same board everywhere, or give one of them a name of its own."));
            }
        }
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
                    "Part '" + label + "' is cut " + units.length(part.cutLength()) + " x "
                            + units.length(part.cutWidth()) + ", larger than a sheet of "
                            + sheet.material().name() + " after trimming (" + units.length(length) + " x "
                            + units.length(width) + ").",
                    List.of("Make the plan smaller, or use a larger sheet."));
        }
    }

    private static boolean within(Part part, double length, double width) {
        return !Grid.less(length, part.cutLength()) && !Grid.less(width, part.cutWidth());
    }
}
