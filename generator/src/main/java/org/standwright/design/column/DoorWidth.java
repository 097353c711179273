package org.standwright.design.column;

import org.standwright.design.StandDesign;

/** How wide a door has to be, mm. */
public final class DoorWidth {
    private DoorWidth() {}

    /**
     * The narrowest inset door on butt hinges whose inner corner swings out within the gap g, t thick: √(w² + t²) - w =
     * g, so w = (t² - g²) / 2g.
     */
    public static double leastToSwing(StandDesign design) {
        double gap = design.drawers().gap();
        double thickness = design.drawers().front().material().thickness();
        return (thickness * thickness - gap * gap) / (2 * gap);
    }
}
