package org.standwright.design.wall.area;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Point2;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.StandBox;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.WallDraft;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;

class ZonesTest {
    @Test
    void aDoorKeepsItsCasingAndAMarginFreeDownToTheFloor() {
        var door = WallDraft.cased(WallDraft.obstacle(Kind.DOOR, 1000, 50, 900, 2000), 70);

        assertThat(only(door).itself()).isEqualTo(new Rect(1000, 0, 1900, 2000));
        assertThat(only(door).kept()).isEqualTo(new Rect(920, 0, 1980, 2080));
    }

    @Test
    void aWindowKeepsItsCasingAndAMarginFreeAllRound() {
        var window = WallDraft.cased(WallDraft.obstacle(Kind.WINDOW, 1000, 900, 800, 1000), 60);

        assertThat(only(window).kept()).isEqualTo(new Rect(930, 830, 1870, 1970));
    }

    @Test
    void anOutletKeepsSpaceForCordsFreeBelow() {
        assertThat(only(WallDraft.obstacle(Kind.OUTLET, 1000, 1100, 80, 120)).kept())
                .isEqualTo(new Rect(950, 950, 1130, 1270));
    }

    @Test
    void aSwitchKeepsTheSameFreeAllRound() {
        assertThat(only(WallDraft.obstacle(Kind.SWITCH, 1000, 1100, 80, 120)).kept())
                .isEqualTo(new Rect(950, 1050, 1130, 1270));
    }

    @Test
    void aBenchKeepsTheWallBehindItFree() {
        assertThat(only(WallDraft.obstacle(Kind.BENCH, 1000, 100, 1500, 800)).kept())
                .isEqualTo(new Rect(1000, 0, 2500, 900));
    }

    @Test
    void aStandIsAsLargeAsItsBox() {
        var plain = WallDraft.obstacle(Kind.STAND, 1000, 0, 1, 1);
        var stand = new Obstacle(
                plain.kind(),
                plain.name(),
                plain.x(),
                plain.bottom(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                plain.margin(),
                plain.swing(),
                Optional.of(new StandBox("lathe", 700, 450, 1300)));

        assertThat(only(stand))
                .isEqualTo(new Zone(
                        0, "lathe", Kind.STAND, new Rect(1000, 0, 1700, 1300), new Rect(1000, 0, 1700, 1300), 450));
    }

    /** 762 mm wide, 1981 mm high: NEC 110.26(A), read where it is quoted (references 4); secondary for us. */
    @Test
    void anElectricalPanelKeepsItsWorkingSpaceFree() {
        assertThat(only(WallDraft.obstacle(Kind.ELECTRICAL_PANEL, 1000, 1200, 400, 600))
                        .kept())
                .isEqualTo(new Rect(819, 0, 1581, 1981));
    }

    /** As wide and as high as the equipment if that is more: NEC 110.26(A), as above. */
    @Test
    void aLargePanelKeepsItsOwnWidthAndHeightFree() {
        assertThat(only(WallDraft.obstacle(Kind.ELECTRICAL_PANEL, 1000, 1200, 900, 900))
                        .kept())
                .isEqualTo(new Rect(1000, 0, 1900, 2100));
    }

    @Test
    void theWorkingSpaceOfAPanelNearACornerMovesAwayFromIt() {
        assertThat(only(WallDraft.obstacle(Kind.ELECTRICAL_PANEL, 100, 1200, 400, 600))
                        .kept())
                .isEqualTo(new Rect(0, 0, 762, 1981));
    }

    @Test
    void whatIsKeptFreeEndsWhereTheWallDoes() {
        assertThat(only(WallDraft.obstacle(Kind.PIPE, 0, 0, 60, 2400)).kept()).isEqualTo(new Rect(0, 0, 85, 2400));
    }

    @Test
    void twoThatOverlapAreNamed() {
        var bench = WallDraft.obstacle(Kind.BENCH, 1000, 0, 1500, 900);
        var outlet = WallDraft.obstacle(Kind.OUTLET, 1200, 850, 80, 120);

        assertThat(zones(bench, outlet).notes())
                .containsExactly("'bench' and 'outlet' of wall 'north' overlap by 80 mm x 50 mm;"
                        + " what they keep free is taken as one.");
        assertThat(BareArea.of(outline(bench, outlet), zones(bench, outlet).zones())
                        .size())
                .isEqualTo(3000 * 2400 - 1500 * 900 - 180 * 120);
    }

    @Test
    void refusesOneBeyondTheEndWithTheNearestPlace() {
        Refused.at("/walls/0/obstacles/0/x", () -> zones(WallDraft.obstacle(Kind.DOOR, 2220, 0, 900, 2000)))
                .isEqualTo("'door' reaches out of wall 'north': beyond its right end by 120 mm."
                        + " Its nearest place at this height is x = 2100 mm.");
    }

    @Test
    void refusesOneAboveTheCeilingWithTheNearestHeight() {
        Refused.at("/walls/0/obstacles/0/bottom", () -> zones(WallDraft.obstacle(Kind.WINDOW, 500, 1500, 900, 1000)))
                .isEqualTo("'window' reaches out of wall 'north': beyond its upper edge by 100 mm."
                        + " Above this x its nearest bottom is 1400 mm above the floor.");
    }

    @Test
    void refusesOneThatCutsTheSlope() {
        var corners = List.of(new Point2(0, 0), new Point2(3000, 0), new Point2(3000, 2400), new Point2(0, 1400));
        var wall = WallDraft.cornered("north", corners, WallDraft.obstacle(Kind.CABINET, 300, 0, 600, 1800));
        var design = new WallDraft().walls(wall).design();

        Refused.at("/walls/0/obstacles/0/x", () -> Zones.of(design, 0, WallOutline.of(wall, Units.MM, "/walls/0")))
                .isEqualTo(
                        "'cabinet' at x = 300 mm to 900 mm, 0 mm to 1800 mm above the floor, reaches out of the outline"
                                + " of wall 'north' by 300 mm upwards. Its nearest place at this height is x = 1200 mm."
                                + " Or above this x it can reach up to 1500 mm at most.");
    }

    @Test
    void refusesOneThatFitsNowhere() {
        Refused.at("/walls/0/obstacles/0/x", () -> zones(WallDraft.obstacle(Kind.BEAM, 100, 2000, 3200, 200)))
                .isEqualTo("'beam' reaches out of wall 'north': beyond its right end by 300 mm."
                        + " Nowhere along the wall is room for 3200 mm x 200 mm; measure both again.");
    }

    @Test
    void aBeamMayTouchTheEdges() {
        assertThat(only(WallDraft.obstacle(Kind.BEAM, 0, 2200, 3000, 200)).itself())
                .isEqualTo(new Rect(0, 2200, 3000, 2400));
    }

    @Test
    void refusesOneWithoutAWidth() {
        var plain = WallDraft.obstacle(Kind.OUTLET, 1000, 300, 1, 120);
        var thin = new Obstacle(
                plain.kind(),
                Optional.of("outlet by the door"),
                plain.x(),
                plain.bottom(),
                OptionalDouble.empty(),
                plain.height(),
                0,
                0,
                plain.margin(),
                plain.swing(),
                plain.stand());

        Refused.at("/walls/0/obstacles/0/width", () -> zones(thin))
                .isEqualTo("'outlet by the door' of wall 'north' has no width. Give its width.");
    }

    @Test
    void refusesASwingOnAWindow() {
        var plain = WallDraft.obstacle(Kind.WINDOW, 1000, 900, 800, 1000);
        var swung = new Obstacle(
                plain.kind(),
                plain.name(),
                plain.x(),
                plain.bottom(),
                plain.width(),
                plain.height(),
                0,
                0,
                plain.margin(),
                Optional.of(new Swing(Swing.Side.LEFT, 90, 40)),
                plain.stand());

        Refused.at("/walls/0/obstacles/0/swing", () -> zones(swung))
                .isEqualTo("'window' of wall 'north' has a swing, but only doors have."
                        + " Leave its swing out, or say that its kind is door.");
    }

    private static Zone only(Obstacle obstacle) {
        return zones(obstacle).zones().get(0);
    }

    /** On a wall of 3000 x 2400 mm. */
    private static Zones zones(Obstacle... obstacles) {
        return Zones.of(new WallDraft().walls(wall(obstacles)).design(), 0, outline(obstacles));
    }

    private static Outline outline(Obstacle... obstacles) {
        return WallOutline.of(wall(obstacles), Units.MM, "/walls/0");
    }

    private static Wall wall(Obstacle... obstacles) {
        return WallDraft.wall("north", 3000, 2400, obstacles);
    }
}
