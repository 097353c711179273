package org.standwright.design.built;

import org.standwright.design.kit.Size3;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Rect;

/**
 * One drawer as built, all in mm.
 *
 * @param name bay and place from the top: '1.2'
 * @param front seen from the front in the assembly frame: x to the right, y is the height
 * @param cell height of its share of the opening
 * @param box outside of the drawer box
 * @param inside usable inside of the drawer box
 * @param slideLineOnSide centre of the slide above the top face of the bottom panel
 * @param slideLineOnBox centre of the slide above the lower edge of the box
 */
public record DrawerLayout(
        String name,
        Rect front,
        double cell,
        Size3 box,
        Size3 inside,
        Slide.Size slide,
        double slideLineOnSide,
        double slideLineOnBox) {}
