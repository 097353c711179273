package org.standwright.design.wall.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Point2;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.WallDraft;
import org.standwright.unit.Units;

class WallOutlineTest {
    private static final List<Point2> SLOPE =
            List.of(new Point2(0, 0), new Point2(3000, 0), new Point2(3000, 2400), new Point2(0, 1400));

    @Test
    void isARectangleOfTheWallsSize() {
        var outline = WallOutline.of(WallDraft.wall("north", 3000, 2400), Units.MM, "/walls/0");

        assertThat(outline.area()).isCloseTo(7.2e6, within(1e-6));
        assertThat(outline.isRectangle()).isTrue();
    }

    @Test
    void hasTheCornersOfASlope() {
        assertThat(WallOutline.of(WallDraft.cornered("north", SLOPE), Units.MM, "/walls/0")
                        .area())
                .isCloseTo(3000 * (2400 + 1400) / 2.0, within(1e-6));
    }

    @Test
    void refusesAWallWithNeitherSizeNorCorners() {
        Refused.at("/walls/1/outline", () -> of(wall(OptionalDouble.empty(), OptionalDouble.empty(), List.of())))
                .isEqualTo("Wall 'north' has neither a size nor corners."
                        + " Give it a width and a height, or the corners of its outline.");
    }

    @Test
    void refusesAWallWithBoth() {
        Refused.at("/walls/1/outline", () -> of(wall(OptionalDouble.of(3000), OptionalDouble.of(2400), SLOPE)))
                .isEqualTo("Wall 'north' has a size and corners, which may differ."
                        + " Give it a width and a height, or the corners of its outline.");
    }

    @Test
    void refusesAWallWithoutAHeight() {
        Refused.at("/walls/1/height", () -> of(wall(OptionalDouble.of(3000), OptionalDouble.empty(), List.of())))
                .isEqualTo("Wall 'north' has no height."
                        + " Give it a width and a height, or the corners of its outline.");
    }

    @Test
    void refusesAWidthOfNothing() {
        Refused.at("/walls/1/width", () -> of(WallDraft.wall("north", 0, 2400)))
                .isEqualTo("The width of wall 'north' is 0 mm, but must be more than 0. Measure it again.");
    }

    @Test
    void refusesCornersWhoseSidesCross() {
        var bow = List.of(new Point2(0, 0), new Point2(3000, 2400), new Point2(3000, 0), new Point2(0, 2000));

        Refused.at("/walls/1/outline", () -> of(WallDraft.cornered("north", bow)))
                .startsWith("Wall 'north': outline (0.000, 0.000) ")
                .endsWith(" meets itself; list its corners in turn, all the way round.");
    }

    @Test
    void refusesCornersThatDoNotCountFromTheLeftEnd() {
        var away = SLOPE.stream().map(p -> new Point2(p.x() + 120, p.y())).toList();

        Refused.at("/walls/1/outline", () -> of(WallDraft.cornered("north", away)))
                .isEqualTo(
                        "The leftmost corner of wall 'north' is at x = 120 mm, but lengths along a wall count from its"
                                + " left end. Take 120 mm from the x of all its corners.");
    }

    private static void of(Wall wall) {
        WallOutline.of(wall, Units.MM, "/walls/1");
    }

    private static Wall wall(OptionalDouble width, OptionalDouble height, List<Point2> corners) {
        return new Wall("north", width, height, corners, WallDraft.spaced(400, 400), List.of());
    }
}
