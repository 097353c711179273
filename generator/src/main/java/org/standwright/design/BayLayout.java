package org.standwright.design;

import java.util.List;
import org.standwright.geom.Rect;

/**
 * One bay as built.
 *
 * @param number from the left, starting at 1
 * @param opening seen from the front in the assembly frame: x to the right, y is the height
 * @param drawers from top to bottom
 */
public record BayLayout(int number, Rect opening, List<DrawerLayout> drawers) {
    public BayLayout {
        drawers = List.copyOf(drawers);
    }
}
