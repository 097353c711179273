package org.standwright.viewer.hand.change;

import java.util.List;
import org.standwright.geom.Rect;

/**
 * All that is seen, to scale. Its frame: x to the right, y upwards, mm.
 *
 * @param name for those who do not see it
 * @param bounds around everything
 * @param under what is seen behind the things, from the back
 * @param things that can be picked, those that are seen behind others first
 * @param over what is seen before them
 * @param handles that can be dragged
 */
public record Picture(
        String name, Rect bounds, List<Mark> under, List<Thing> things, List<Mark> over, List<Handle> handles) {
    public Picture {
        under = List.copyOf(under);
        things = List.copyOf(things);
        over = List.copyOf(over);
        handles = List.copyOf(handles);
    }
}
