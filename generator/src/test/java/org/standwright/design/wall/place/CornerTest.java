package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.wall.place.Scene.area;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Swing.Side;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;

/** Two walls of 2000 mm that meet: the left one's right end is the right one's left end. Also doors, which swing in plan. */
class CornerTest {
    private static final Rect DOOR = new Rect(1000, 0, 1800, 2000);

    /** Whether a holder 300 mm wide may hang on the first row of a wall. */
    private static boolean hangs(Scene scene, String wall, double x, double depth) {
        scene.holder("rack", area(300, 80, 80), depth, new Spot(wall, 1, x));
        try {
            return scene.arranged().hung().stream().anyMatch(hung -> hung.name().equals("rack"));
        } catch (ImpossibleDesignException refusal) {
            assertThat(refusal.getMessage()).contains("is in the way");
            return false;
        }
    }

    private static Scene corner(double rightHeight) {
        var scene = new Scene();
        scene.wall("left", 2000, 2400).rows(1300);
        scene.wall("right", 2000, 2400).row(rightHeight, new Interval(21, 2000));
        return scene;
    }

    @ParameterizedTest
    @CsvSource({"1500, true", "1500.1, false"})
    void aHolderNearTheCornerLeavesTheDepthOfTheOtherWallsHolderFree(double x, boolean hangs) {
        var scene = corner(1300).holder("deep", area(300, 80, 80), 200, new Spot("right", 1, 21));

        assertThat(hangs(scene, "left", x, 150)).isEqualTo(hangs);
    }

    @ParameterizedTest
    @CsvSource({"150, 150, true", "150, 149.9, false"})
    void aHolderBeyondTheOthersDepthIsFree(double depth, double x, boolean hangs) {
        var scene = corner(1300).holder("in the corner", area(300, 80, 80), depth, new Spot("left", 1, 1682));

        assertThat(hangs(scene, "right", x, 250)).isEqualTo(hangs);
    }

    @ParameterizedTest
    @CsvSource({"1481, true", "1480.9, false"})
    void liftedItStaysClearOfTheOtherWallsHolderAboveIt(double height, boolean hangs) {
        // 80 above the row, 80 below the other row and 21 to lift the lower off
        var scene = corner(height).holder("deep", area(300, 80, 80), 200, new Spot("right", 1, 21));

        assertThat(hangs(scene, "left", 1682, 150)).isEqualTo(hangs);
    }

    @ParameterizedTest
    @CsvSource({"1682, true", "1682.1, false"})
    void itStaysClearOfTheOtherWallsStrips(double x, boolean hangs) {
        // the right wall's strips are 18 mm thick and begin 21 mm from the corner: 2000 - 300 - 18
        assertThat(hangs(corner(1300), "left", x, 150)).isEqualTo(hangs);
    }

    @ParameterizedTest
    @CsvSource({"21, true", "21.1, false"})
    void aHolderThatReachesOutLessThanTheOtherWallsStripsBeginPassesThem(double depth, boolean hangs) {
        assertThat(hangs(corner(1300), "left", 1700, depth)).isEqualTo(hangs);
    }

    @ParameterizedTest
    @CsvSource({"914, true", "913.9, false"})
    void theWorkingSpaceOfAPanelIsFreeOnTheOtherWallToo(double x, boolean hangs) {
        var scene = new Scene();
        scene.wall("left", 2000, 2400).zone(Kind.ELECTRICAL_PANEL, new Rect(1200, 0, 1962, 1981), 50);
        scene.wall("right", 2000, 2400).rows(1300);

        assertThat(hangs(scene, "right", x, 60)).isEqualTo(hangs);
    }

    @Test
    void aShallowHolderPassesAWorkingSpaceAwayFromTheCorner() {
        var scene = new Scene();
        scene.wall("left", 2000, 2400).zone(Kind.ELECTRICAL_PANEL, new Rect(1000, 0, 1900, 1981), 50);
        scene.wall("right", 2000, 2400).rows(1300);

        assertThat(hangs(scene, "right", 0, 100)).isTrue();
        assertThat(hangs(scene, "right", 400, 101)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"450, 1950, true", "449, 1950, false", "0, 1220, true", "0, 1221, false"})
    void furnitureOfTheOtherWallTakesItsDepth(double x, double top, boolean hangs) {
        var scene = new Scene();
        scene.wall("left", 2000, 2400).zone(Kind.CABINET, new Rect(1500, 0, 2000, top), 450);
        scene.wall("right", 2000, 2400).rows(1300);

        assertThat(hangs(scene, "right", x, 150)).isEqualTo(hangs);
    }

    /** Hinge at x = 1800, leaf 800 x 40 mm: beside the hinge it is open at 90° as thick as its handle is. */
    @ParameterizedTest
    @CsvSource({"1840, 300, true", "1839, 300, false", "1839, 30, false"})
    void aDoorOpenAtNinetyDegreesTakesItsThicknessBesideTheHinge(double x, double depth, boolean hangs) {
        var scene = new Scene();
        scene.wall("left", 3000, 2400).door(DOOR, new Swing(Side.RIGHT, 90, 40)).rows(1300);

        assertThat(hangs(scene, "left", x, depth)).isEqualTo(hangs);
    }

    /** At 170° the open leaf lies along the wall, 800 cos 10° = 788 mm beyond the hinge and farther out to 139 mm. */
    @ParameterizedTest
    @CsvSource({"1800, 50, false", "2300, 50, false", "2610, 300, true", "2500, 300, false", "2590, 300, false"})
    void aDoorOpenFarLiesBeforeTheWallBesideIt(double x, double depth, boolean hangs) {
        var scene = new Scene();
        scene.wall("left", 4000, 2400)
                .door(DOOR, new Swing(Side.RIGHT, 170, 40))
                .rows(1300);

        assertThat(hangs(scene, "left", x, depth)).isEqualTo(hangs);
    }

    @Test
    void aDoorSwingsUnderWhatHangsAboveIt() {
        var scene = new Scene();
        scene.wall("left", 4000, 2600)
                .door(DOOR, new Swing(Side.RIGHT, 170, 40))
                .rows(2080);

        assertThat(hangs(scene, "left", 1900, 300)).isTrue();
    }

    /**
     * The opening ends 200 mm from the right wall. Hinged there, the open leaf and its handle take 40 mm of that; hinged at
     * the other side, the leaf's outer corner goes round on a radius of 801 mm.
     */
    @ParameterizedTest
    @CsvSource({"RIGHT, 160, true", "RIGHT, 161, false", "LEFT, 199, true", "LEFT, 201, false"})
    void aDoorNearTheCornerSweepsBeforeTheOtherWall(Side hinges, double depth, boolean hangs) {
        var scene = new Scene();
        scene.wall("left", 2000, 2400).door(DOOR, new Swing(hinges, 90, 40));
        scene.wall("right", 2000, 2400).rows(1300);

        assertThat(hangs(scene, "right", 0, depth)).isEqualTo(hangs);
    }

    @Test
    void aRefusalSaysThatADoorSwingsThere() {
        var scene = new Scene();
        scene.wall("left", 4000, 2400)
                .door(DOOR, new Swing(Side.RIGHT, 170, 40))
                .rows(1300);
        scene.holder("rack", area(300, 80, 80), 50, new Spot("left", 1, 1900));

        assertThatThrownBy(scene::arranged).hasMessageContaining("the swing of 'door' is in the way");
    }
}
