package org.standwright.viewer.scene.around;

import java.util.Locale;
import org.standwright.design.wall.Obstacle;
import org.standwright.viewer.scene.surface.Surface;

/**
 * Something on a wall or before it that no cleat crosses.
 *
 * @param itself a plain block, a plate where it is flush, a leaf or pane where it is an opening
 * @param casing the trim around an opening, empty where it has none
 */
public record Obstruction(Obstacle.Kind kind, Surface itself, Surface casing, Sign sign) {
    /** Style class of its colour: 'obstacle-window'. */
    public String styleClass() {
        return "obstacle-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether there is a hole in the wall for it. */
    static boolean isOpening(Obstacle.Kind kind) {
        return kind == Obstacle.Kind.DOOR || kind == Obstacle.Kind.WINDOW;
    }
}
