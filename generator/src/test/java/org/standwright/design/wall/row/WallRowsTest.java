package org.standwright.design.wall.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.kit.Point2;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.WallDraft;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Hole;

/** Studs every 400 mm from 400 mm, strips of at most 2000 mm. */
class WallRowsTest {
    @Test
    void aStripOverhangsItsLastStudByAQuarterOfTheBay() {
        var draft = plain().walls(WallDraft.wall("north", 2000, 2400)).rows(new Rows.Fixed(600, 1000, 400));

        assertThat(rows(draft))
                .containsExactly(
                        "row 1 at 600: 300..1700 screws 400 800 1200 1600",
                        "row 2 at 1000: 300..1700 screws 400 800 1200 1600");
    }

    @Test
    void jointsGoFromBayToBayAndLengthsComeAgain() {
        assertThat(rows(plain()))
                .containsExactly(
                        "row 1 at 600: 300..1300 screws 400 800 1200, 1500..2900 screws 1600 2000 2400 2800",
                        "row 2 at 1000: 300..1700 screws 400 800 1200 1600, 1900..2900 screws 2000 2400 2800",
                        "row 3 at 1400: 300..1300 screws 400 800 1200, 1500..2900 screws 1600 2000 2400 2800",
                        "row 4 at 1800: 300..1700 screws 400 800 1200 1600, 1900..2900 screws 2000 2400 2800");
    }

    @Test
    void aStripThatItsSheetCutsShortOverhangsLess() {
        assertThat(rows(new WallDraft().rows(new Rows.Fixed(600, 700, 400))))
                .containsExactly("row 1 at 600: 335..2825 screws 400 800 1200 1600 2000 2400 2800");
    }

    @Test
    void stripsAreNamedByWallRowAndPlace() {
        var draft = plain().walls(WallDraft.wall("north", 2000, 2400)).rows(new Rows.Fixed(600, 1100, 500));

        assertThat(only(draft).strips()).extracting(Strip::label).containsExactly("north row 1", "north row 2");
        assertThat(only(plain()).rows().get(2).strips())
                .extracting(Strip::label)
                .containsExactly("north row 3 strip 1", "north row 3 strip 2");
    }

    @Test
    void rowsStopShortOfWhatADoorKeepsFree() {
        var door = WallDraft.cased(WallDraft.obstacle(Kind.DOOR, 1300, 0, 800, 900), 70);
        var draft = plain().walls(WallDraft.wall("north", 3000, 2400, door)).rows(new Rows.Fixed(600, 1100, 500));

        // kept free from 1220 to 2180 and up to 980; the stud at 1200 is too near to that for a screw;
        // above it 600 and 1800 cover as much as 1000 and 1400, and 600 is sawn anyway
        assertThat(rows(draft))
                .containsExactly(
                        "row 1 at 600: 300..900 screws 400 800, 2300..2900 screws 2400 2800",
                        "row 2 at 1100: 300..900 screws 400 800, 1100..2900 screws 1200 1600 2000 2400 2800");
    }

    @Test
    void noRowRunsThroughTheWorkingSpaceOfAnElectricalPanel() {
        var panel = WallDraft.obstacle(Kind.ELECTRICAL_PANEL, 1000, 1200, 400, 600);
        var wall =
                only(plain().walls(WallDraft.wall("north", 3000, 2400, panel)).rows(new Rows.Fixed(600, 2100, 1500)));

        // 819 to 1581 up to 1981: NEC 110.26(A) as quoted in references 4, secondary
        assertThat(RowText.of(wall))
                .containsExactly(
                        "row 1 at 600: 1900..2900 screws 2000 2400 2800",
                        "row 2 at 2100: 300..1300 screws 400 800 1200, 1500..2900 screws 1600 2000 2400 2800");
        assertThat(wall.shortRuns()).singleElement().satisfies(run -> {
            assertThat(run.along().to()).isEqualTo(819);
            assertThat(run.why())
                    .isEqualTo("only one stud lies 25 mm or more within it, and a strip is screwed to two at least");
        });
    }

    @Test
    void rowsUnderASlopeStartWhereAHangerStillGetsInUnderIt() {
        var corners = List.of(new Point2(0, 0), new Point2(3000, 0), new Point2(3000, 2400), new Point2(0, 1400));
        var wall = only(plain().walls(WallDraft.cornered("north", corners)).rows(new Rows.Fixed(1800, 2200, 400)));

        // a hanger needs 85 mm above the row: bare from x = 1455, and from x = 2655 in the upper one
        assertThat(RowText.of(wall))
                .containsExactly("row 1 at 1800: 1500..2900 screws 1600 2000 2400 2800", "row 2 at 2200: ");
        assertThat(wall.shortRuns()).singleElement().satisfies(run -> {
            assertThat(run.row()).isEqualTo(2);
            assertThat(run.along().from()).isCloseTo(2655, within(1e-3));
        });
    }

    @Test
    void inACornerTheLeftWallRunsThroughAndTheRightOneStopsShort() {
        var north = WallDraft.framed(WallDraft.wall("north", 2000, 2400), WallDraft.spaced(400, 370));
        var east = WallDraft.framed(WallDraft.wall("east", 1500, 2400), WallDraft.spaced(400, 50));
        var draft = plain().walls(north, east).rows(new Rows.Fixed(600, 700, 400));
        var walls = WallRows.of(draft.design());

        assertThat(RowText.of(walls.get(0))).containsExactly("row 1 at 600: 270..2000 screws 370 770 1170 1570 1970");
        assertThat(RowText.of(walls.get(1))).containsExactly("row 1 at 600: 21..1350 screws 50 450 850 1250");
        assertThat(box(draft, walls.get(0))).isEqualTo(new Box3(new Vec3(270, -18, 522), new Vec3(2000, 0, 600)));
        assertThat(box(draft, walls.get(1))).isEqualTo(new Box3(new Vec3(1982, -1350, 522), new Vec3(2000, -21, 600)));
    }

    @Test
    void ofTwoStudsSideBySideTheLeftOneTakesTheScrews() {
        var wall = WallDraft.framed(
                WallDraft.wall("north", 1500, 2400), WallDraft.listed(100.0, 500.0, 900.0, 938.0, 1300.0));

        assertThat(rows(plain().walls(wall).rows(new Rows.Fixed(600, 700, 400))))
                .containsExactly("row 1 at 600: 0..1400 screws 100 500 900 1300");
    }

    @Test
    void aStripIsAPartWithItsBevelTowardsTheWallAndItsScrewsFromTheRoom() {
        var draft = plain().walls(WallDraft.wall("north", 1000, 2400)).rows(new Rows.Fixed(600, 700, 400));
        var strip = parts(draft, only(draft)).get(0);
        var part = strip.part();

        assertThat(part.name()).isEqualTo("strip");
        assertThat(strip.placement().apply(new Vec3(0, part.width(), part.thickness())))
                .isEqualTo(new Vec3(300, -18, 600));
        assertThat(strip.placement().apply(Vec3.ZERO)).isEqualTo(new Vec3(300, 0, 522));
        // at the wall it ends at top + blunt - rise = 600 + 2 - 18
        var bevel = (Bevel) part.features().get(0);
        assertThat(strip.placement()
                        .apply(new Vec3(0, part.width() - bevel.setback(), 0))
                        .z())
                .isCloseTo(584, within(1e-9));
        assertThat(part.features().stream().filter(Hole.class::isInstance).map(Hole.class::cast))
                .extracting(Hole::x, Hole::y, Hole::diameter)
                .containsExactly(tuple(100.0, 31.0, 5.5), tuple(500.0, 31.0, 5.5));
    }

    @Test
    void refusesAWallThatNoStripCanBeScrewedTo() {
        var wall = WallDraft.framed(WallDraft.wall("north", 2000, 2400), WallDraft.listed(100.0, 1900.0));
        var draft = plain().walls(wall).cleat(WallDraft.cleat(80, 45, 2, OptionalDouble.of(1000)));

        Refused.at("/rows", () -> WallRows.of(draft.design()))
                .isEqualTo("In no row is there bare wall wide enough for a strip that is screwed to two studs."
                        + " Move the rows, or look for more studs.");
    }

    @Test
    void refusesTwoWallsOfOneNameAndMoreThanThree() {
        var wall = WallDraft.wall("north", 2000, 2400);

        Refused.at("/walls/1/name", () -> WallRows.of(plain().walls(wall, wall).design()))
                .startsWith("Two walls are called 'north'");
        Refused.at(
                        "/walls",
                        () -> WallRows.of(plain().walls(wall, wall, wall, wall).design()))
                .startsWith("'wall' has 4 walls");
    }

    private static WallDraft plain() {
        return new WallDraft().cleat(WallDraft.cleat(80, 45, 2, OptionalDouble.of(2000)));
    }

    private static List<String> rows(WallDraft draft) {
        return RowText.of(only(draft));
    }

    private static CleatedWall only(WallDraft draft) {
        return WallRows.of(draft.design()).get(0);
    }

    private static Box3 box(WallDraft draft, CleatedWall wall) {
        return parts(draft, wall).get(0).box();
    }

    private static List<PlacedPart> parts(WallDraft draft, CleatedWall wall) {
        return StripParts.of(wall, draft.cleat, StripScrews.of(draft.design()));
    }
}
