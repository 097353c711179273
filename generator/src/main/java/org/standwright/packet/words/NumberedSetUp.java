package org.standwright.packet.words;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.part.Edge;
import org.standwright.sheet.SetUp;
import org.standwright.sheet.SetUp.Made;
import org.standwright.sheet.SheetUnit;

/**
 * A set-up at its place in the cutting order.
 *
 * @param number counted through a material from 1 on
 */
public record NumberedSetUp(int number, SetUp setUp) {
    /** From the reference edge to the near side of the kerf, mm. */
    public double setting() {
        return SheetUnit.mm(setUp.setting());
    }

    /** Its cuts in order, those of one sheet from one edge by one guide together. */
    public Collection<List<Made>> bySheet() {
        return setUp.cuts().stream()
                .collect(Collectors.groupingBy(
                        made -> new Place(made.sheet(), made.cut().reference(), Guide.of(made.cut())),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values();
    }

    private record Place(int sheet, Edge reference, Guide guide) {}
}
