package org.standwright.sheet.bar;

import java.util.List;

/**
 * One bar and what is cut from it.
 *
 * @param pieces labels in cutting order
 * @param offcut what is left after the last cut, units
 */
public record CutBar(BarKind bar, List<String> pieces, int offcut) {
    public CutBar {
        pieces = List.copyOf(pieces);
    }
}
