package org.standwright.router;

import java.util.List;
import org.standwright.design.kit.Router;
import org.standwright.part.Material;

/** Where a router cuts each part of a cut list that is cut from sheets. */
public record RouterPlan(Router router, List<MaterialSheets> materials) {
    /** All boards of one material. */
    public record MaterialSheets(Material material, List<RoutedSheet> sheets) {
        public MaterialSheets {
            sheets = List.copyOf(sheets);
        }

        /** Boards that have to be bought. */
        public int bought() {
            return Math.toIntExact(
                    sheets.stream().filter(sheet -> sheet.from().isBought()).count());
        }
    }

    public RouterPlan {
        materials = List.copyOf(materials);
    }
}
