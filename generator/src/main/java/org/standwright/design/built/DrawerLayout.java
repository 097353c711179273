package org.standwright.design.built;

import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param slide empty when it runs on runners
 * @param slideLineOnSide centre of the slide above the top face of the bottom panel
 * @param slideLineOnBox centre of the slide above the lower edge of the box
 */
public record DrawerLayout(
        String name,
        Rect front,
        double cell,
        Size3 box,
        Size3 inside,
        Optional<Slide.Size> slide,
        OptionalDouble slideLineOnSide,
        OptionalDouble slideLineOnBox) {
    /** What a drawer that no slide holds may travel, of its box's length; common practice, no source. */
    private static final double WITHOUT_SLIDE = 0.75;

    /** How far it opens, mm. */
    public double travel() {
        return slide.map(Slide.Size::travel).orElse(WITHOUT_SLIDE * box.depth());
    }
}
