package org.standwright.packet.words;

import java.util.List;
import org.standwright.design.Shelves;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** All shelves of one compartment. */
public record ShelfRow(Compartment compartment, Shelves.Kind kind) {
    /** Of every compartment that has shelves, from left to right and top to bottom. */
    public static List<ShelfRow> of(Stand stand) {
        return Compartment.of(stand.bays()).stream()
                .filter(compartment -> !compartment.shelves().isEmpty())
                .map(compartment -> new ShelfRow(compartment, kind(compartment, stand)))
                .toList();
    }

    /** Fixed shelves are housed in the uprights and so longer than their opening is wide. */
    private static Shelves.Kind kind(Compartment compartment, Stand stand) {
        var opening = compartment.section().opening();
        double underside = opening.y0() + compartment.shelves().get(0);
        boolean housed = stand.assembly().parts().stream()
                .map(part -> part.box())
                .filter(box -> isOn(box, underside, opening))
                .anyMatch(box -> Grid.less(box.min().x(), opening.x0())
                        && Grid.less(opening.x1(), box.max().x()));
        return housed ? Shelves.Kind.FIXED : Shelves.Kind.ADJUSTABLE;
    }

    private static boolean isOn(Box3 box, double underside, Rect opening) {
        double middle = (opening.x0() + opening.x1()) / 2;
        return Grid.same(box.min().z(), underside)
                && Grid.less(box.min().x(), middle)
                && Grid.less(middle, box.max().x());
    }
}
