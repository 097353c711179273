package org.standwright.design.built;

import java.util.HashMap;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.KeptTogether;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** What parts must have in common to leave the sheet as one block. */
final class TogetherRules {
    private final Units units;

    private TogetherRules(Units units) {
        this.units = units;
    }

    static void check(List<PartsTogether> all, Units units) {
        var rules = new TogetherRules(units);
        var taken = new HashMap<String, PartsTogether>();
        for (var together : all) {
            rules.check(together);
            for (var part : together.parts()) {
                if (taken.put(part.label(), together) != null) {
                    throw new ImpossibleDesignException(
                            together.field(),
                            "Part '" + part.label() + "' belongs to two blocks that are kept together.",
                            List.of("Leave it out of one of them."));
                }
            }
        }
    }

    private void check(PartsTogether together) {
        var first = together.parts().get(0);
        if (together.parts().size() < 2) {
            throw new ImpossibleDesignException(
                    together.field() + "/parts",
                    "Part '" + first.label() + "' alone has nothing to be kept together with.",
                    List.of("Name another part beside it, or leave the entry out."));
        }
        for (var part : together.parts()) {
            if (!part.part().material().equals(first.part().material())) {
                throw differ(together, first, part, "are of " + material(first) + " and " + material(part));
            }
            if (!(together.as() instanceof KeptTogether.OneSheet) && !fitsInStrip(together, first, part)) {
                throw differ(together, first, part, "are cut " + size(first) + " and " + size(part));
            }
        }
    }

    private static boolean fitsInStrip(PartsTogether together, PlacedPart first, PlacedPart part) {
        return Grid.same(together.commonSide(first.part()), together.commonSide(part.part()));
    }

    private static ImpossibleDesignException differ(
            PartsTogether together, PlacedPart first, PlacedPart other, String how) {
        return new ImpossibleDesignException(
                together.field(),
                "Parts '" + first.label() + "' and '" + other.label() + "' " + how
                        + ", but one block takes one material and, as a strip, one length or one width.",
                List.of("Keep only those together that agree."));
    }

    private static String material(PlacedPart part) {
        return part.part().material().name();
    }

    private String size(PlacedPart part) {
        return units.length(part.part().roughLength()) + " x "
                + units.length(part.part().roughWidth());
    }
}
