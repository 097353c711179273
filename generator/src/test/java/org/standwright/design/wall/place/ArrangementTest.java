package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.wall.place.Scene.area;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things.Use;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/** Where holders hang. Rows of {@link Scene}: a strip is 88 mm high, a holder is lifted 21 mm to come off. */
class ArrangementTest {
    @Test
    void hangsWithinReachBesideItsNeighboursWithRoomForFingers() {
        var scene = new Scene();
        scene.wall("north", 3000, 2400).rows(900, 1200, 1500, 1800);
        scene.holder("glue shelf", area(400, 100, 200), 150).holder("saw rack", area(400, 60, 100), 60);

        assertThat(scene.lines())
                .containsExactly(
                        "glue shelf: north row 2 at 0, on its own strip",
                        "saw rack: north row 2 at 420, on its own strip");
    }

    @Test
    void theMostUsedTakesTheBestPlaceWhateverItsTurn() {
        var scene = new Scene();
        scene.wall("north", 500, 2400).rows(1300, 1900);
        scene.holder("yearly", area(400, 80, 100), 100, Use.YEARLY, 1, false, Optional.empty())
                .holder("daily", area(400, 80, 100), 100, Use.DAILY, 1, false, Optional.empty());

        assertThat(scene.lines())
                .containsExactly(
                        "yearly: north row 2 at 0, on its own strip", "daily: north row 1 at 0, on its own strip");
    }

    @Test
    void theHeavyHangsLowerThanTheLight() {
        var scene = new Scene();
        scene.wall("north", 3000, 2400).rows(1200, 1500);
        scene.holder("vices", area(400, 80, 100), 100, Use.WEEKLY, 20, false, Optional.empty());

        assertThat(scene.lines()).containsExactly("vices: north row 1 at 0, on its own strip");
    }

    @Test
    void ofTwoRowsEquallyGoodTheLowerIsTaken() {
        var scene = new Scene();
        scene.wall("north", 3000, 2400).rows(1200, 1500);
        scene.holder("rack", area(400, 80, 80), 100);

        assertThat(scene.lines()).containsExactly("rack: north row 1 at 0, on its own strip");
    }

    @Test
    void aHangerReachesOverTwoStudsWhereItCan() {
        var scene = new Scene(); // studs at 200, 600, 1000
        scene.wall("north", 1200, 2400).row(1300, new Interval(500, 1200));
        scene.holder("rack", area(450, 80, 80), 100);

        // from 500 to 950 it would reach over the stud at 600 only
        assertThat(scene.lines()).containsExactly("rack: north row 1 at 575, on its own strip");
    }

    @Test
    void bridgesAGapBetweenStripsWithBothEndsOnThem() {
        var scene = new Scene();
        scene.wall("north", 700, 2400).row(1300, new Interval(0, 250), new Interval(400, 700));
        scene.holder("rack", area(600, 80, 80), 100);

        assertThat(scene.lines()).containsExactly("rack: north row 1 at 0, on its own strip");
    }

    @Test
    void aboveAnotherItLeavesRoomToLiftThatOff() {
        // 300 from row to row: 200 above the lower one, 21 to lift it off, so at most 79 below the upper one
        assertThat(stacked(79)).isEqualTo(2);
        assertThat(stacked(79.1)).isEqualTo(1);
    }

    private static long stacked(double below) {
        var scene = new Scene();
        scene.wall("north", 420, 3000).rows(1200, 1500);
        scene.holder("lower", area(400, 60, 200), 100, new Spot("north", 1, 0))
                .holder("upper", area(400, below, 100), 100);
        return scene.arranged().hung().size();
    }

    @Test
    void underTheCeilingItLeavesRoomToLiftItOff() {
        assertThat(under(1321)).isEqualTo(1);
        assertThat(under(1320.9)).isZero();
    }

    private static long under(double ceiling) {
        var scene = new Scene();
        scene.wall("north", 420, ceiling).rows(1200);
        return scene.holder("rack", area(400, 60, 100), 100).arranged().hung().size();
    }

    @Test
    void underASlopeItsUpperCornerStaysInsideTheWall() {
        var scene = new Scene(); // the slope is 45°: at height 1200 + 100 + 21 it begins at x = 321
        scene.wall(
                        "gable",
                        new Vec2(0, 0),
                        new Vec2(2000, 0),
                        new Vec2(2000, 2000),
                        new Vec2(1000, 2000),
                        new Vec2(0, 1000))
                .rows(1200);
        scene.holder("rack", area(400, 60, 100), 100);

        assertThat(scene.lines()).containsExactly("rack: gable row 1 at 321, on its own strip");
    }

    @Test
    void hangsBesideAWindowAndAboveABenchButNotBeforeThem() {
        var scene = new Scene();
        scene.wall("north", 1500, 2400)
                .zone(Kind.WINDOW, new Rect(500, 1000, 1500, 2000), 0)
                .zone(Kind.BENCH, new Rect(0, 0, 1500, 900), 600)
                .rows(800, 1050, 1400);
        scene.holder("first", area(450, 80, 80), 100)
                .holder("second", area(450, 80, 80), 100)
                .holder("third", area(450, 80, 80), 100);

        assertThat(scene.lines())
                .containsExactly(
                        "first: north row 3 at 0, on its own strip",
                        "second: north row 2 at 0, on its own strip",
                        "third: no run has 450 mm where 181 mm with the room to lift it off are left free by the other"
                                + " holders. Make room, or put it on another wall.");
    }

    @Test
    void whatIsNotUsedForAYearLosesItsPlace() {
        var scene = new Scene();
        scene.wall("north", 1500, 2400).rows(1200);
        scene.holder("old jigs", area(400, 80, 80), 100, Use.UNUSED, 1, false, Optional.of(new Spot("north", 1, 0)));

        assertThat(scene.arranged().unplaced())
                .singleElement()
                .satisfies(left -> assertThat(left.why()).startsWith("not used for a year"));
    }

    @Test
    void nothingFlammableHangsAboveAStand() {
        var scene = new Scene();
        scene.wall("north", 2000, 2400)
                .zone(Kind.STAND, new Rect(0, 0, 1200, 1000), 700)
                .rows(1300);
        scene.holder("solvents", area(400, 80, 80), 100, Use.DAILY, 1, true, Optional.empty())
                .holder("brushes", area(400, 80, 80), 100, Use.WEEKLY, 1, false, Optional.empty());

        assertThat(scene.lines())
                .containsExactly(
                        "solvents: north row 1 at 1200, on its own strip",
                        "brushes: north row 1 at 0, on its own strip");
    }

    @Test
    void flammableThingsWithAStandBelowEveryRunStayUnplacedAndSaySo() {
        var scene = new Scene();
        scene.wall("north", 1000, 2400)
                .zone(Kind.STAND, new Rect(0, 0, 700, 1000), 700)
                .rows(1300);
        scene.holder("solvents", area(400, 80, 80), 100, Use.DAILY, 1, true, Optional.empty());

        assertThat(scene.lines())
                .containsExactly("solvents: no run has 400 mm where 181 mm with the room to lift it off are clear of"
                        + " obstacles, and not above a stand, where nothing flammable hangs.");
    }

    @Test
    void whatIsWiderThanAnyRunSaysHowLongTheLongestIs() {
        var scene = new Scene();
        scene.wall("north", 1000, 2400).rows(1300);
        scene.holder("ladder", area(1200, 80, 80), 100);

        assertThat(scene.lines())
                .containsExactly(
                        "ladder: its hanger is 1200 mm long, wider than any run of strips bears; the longest run"
                                + " is 1000 mm. Make it narrower.");
    }

    @Test
    void triesAgainWithWhatFoundNoPlace() {
        // the narrow one is used more and would take the only run that bears the wide one
        var scene = new Scene();
        scene.wall("north", 1000, 2400).row(1300, new Interval(0, 600)).row(1900, new Interval(0, 300));
        scene.holder("wide", area(600, 80, 80), 100, Use.YEARLY, 1, false, Optional.empty())
                .holder("narrow", area(300, 80, 80), 100, Use.DAILY, 1, false, Optional.empty());

        assertThat(scene.lines())
                .containsExactly(
                        "wide: north row 1 at 0, on its own strip", "narrow: north row 2 at 0, on its own strip");
    }

    @Test
    void theSameDesignGivesTheSameArrangement() {
        var first = RandomScene.of(7).arranged();
        var second = RandomScene.of(7).arranged();

        assertThat(first.toString()).isEqualTo(second.toString());
        assertThat(first.hung()).isNotEmpty();
    }
}
