package org.standwright.design.built;

import java.util.List;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.geom.Rect;

/**
 * One door as built.
 *
 * @param name bay and place from the top: '1.2'
 * @param front seen from the front in the assembly frame: x to the right, y is the height
 * @param hung the side of its hinges, left or right
 * @param hinges heights of the hinges' centres above the door's lower edge, rising, mm
 */
public record DoorLayout(String name, Rect front, Side hung, Hinge hinge, List<Double> hinges) {
    public DoorLayout {
        hinges = List.copyOf(hinges);
    }
}
