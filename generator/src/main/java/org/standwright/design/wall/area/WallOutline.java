package org.standwright.design.wall.area;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Wall;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.unit.Units;

/** The outline of a wall, from its size or from its corners. */
public final class WallOutline {
    private WallOutline() {}

    /**
     * Refuses a wall with neither size nor corners, with both, and corners that enclose no wall.
     *
     * @param units of lengths in a refusal
     * @param field of the wall: {@code /walls/0}
     */
    public static Outline of(Wall wall, Units units, String field) {
        boolean sized = wall.width().isPresent() || wall.height().isPresent();
        boolean cornered = !wall.outline().isEmpty();
        if (sized == cornered) {
            throw new ImpossibleDesignException(
                    field + "/outline",
                    "Wall '" + wall.name() + "' has "
                            + (sized ? "a size and corners, which may differ." : "neither a size nor corners."),
                    List.of("Give it a width and a height, or the corners of its outline."));
        }
        return sized ? rectangle(wall, units, field) : polygon(wall, units, field);
    }

    private static Outline rectangle(Wall wall, Units units, String field) {
        double width = wall.width().orElseThrow(() -> missing(wall, "width", field));
        double height = wall.height().orElseThrow(() -> missing(wall, "height", field));
        positive(wall, "width", width, units, field);
        positive(wall, "height", height, units, field);
        return Outline.of(new Rect(0, 0, width, height));
    }

    private static ImpossibleDesignException missing(Wall wall, String what, String field) {
        return new ImpossibleDesignException(
                field + "/" + what,
                "Wall '" + wall.name() + "' has no " + what + ".",
                List.of("Give it a width and a height, or the corners of its outline."));
    }

    private static void positive(Wall wall, String what, double size, Units units, String field) {
        if (!Grid.less(0, size)) {
            throw new ImpossibleDesignException(
                    field + "/" + what,
                    "The " + what + " of wall '" + wall.name() + "' is " + units.length(size)
                            + ", but must be more than 0.",
                    List.of("Measure it again."));
        }
    }

    private static Outline polygon(Wall wall, Units units, String field) {
        var outline = outline(wall, field);
        double left = outline.bounds().x0();
        if (!Grid.same(left, 0)) {
            throw new ImpossibleDesignException(
                    field + "/outline",
                    "The leftmost corner of wall '" + wall.name() + "' is at x = " + units.length(left)
                            + ", but lengths along a wall count from its left end.",
                    List.of("Take " + units.length(left) + " from the x of all its corners."));
        }
        return outline;
    }

    private static Outline outline(Wall wall, String field) {
        var corners = wall.outline().stream()
                .map(corner -> new Vec2(corner.x(), corner.y()))
                .toList();
        try {
            return new Outline(corners);
        } catch (IllegalArgumentException refused) {
            throw new ImpossibleDesignException(
                    field + "/outline", "Wall '" + wall.name() + "': " + refused.getMessage(), List.of());
        }
    }
}
