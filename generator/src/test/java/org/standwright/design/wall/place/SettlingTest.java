package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.wall.place.Scene.area;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Things.Use;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;

/** What is made better after all hang, and what a place is rounded to. */
class SettlingTest {
    private record Costs(double greedy, double settled, int moves, int hung) {}

    private static Costs costs(Scene scene) {
        var design = scene.design();
        var walls = scene.walls();
        var all = IntStream.range(0, scene.made().size())
                .mapToObj(
                        at -> ToHang.of(at, scene.made().get(at), design.cleat().headroom()))
                .toList();
        var search = new Search(walls, new Cost(design.person()), Tape.of(design.unit()));
        var greedy = new Hanging(search).inTurn(all, new Board(new EmptyWalls(walls, design.cleat(), all)));
        var layout = greedy.layout();
        double before = layout.cost();
        int hung = layout.all().size();
        new Settling(search, layout).settle();
        assertThat(layout.all()).hasSize(hung);
        return new Costs(before, layout.cost(), layout.board().moves(), hung);
    }

    @Test
    void settlingNeverCostsMoreAndOftenLess() {
        int better = 0;
        for (long seed = 1; seed <= 100; seed++) {
            var costs = costs(RandomScene.of(seed));
            assertThat(costs.settled).as("seed " + seed).isLessThanOrEqualTo(costs.greedy + 1e-6);
            better += costs.settled < costs.greedy - 1 ? 1 : 0;
            assertThat(costs.moves == 0 || costs.settled < costs.greedy)
                    .as("seed " + seed)
                    .isTrue();
        }
        assertThat(better).isGreaterThan(10);
    }

    @Test
    void whatHangsAsWellElsewhereMakesRoomForWhatDoesNot() {
        // the daily one takes the first row; the wide one, used less, has only the second then, out of reach
        var scene = new Scene();
        scene.wall("north", 1000, 2600).row(1300, new Interval(0, 600)).row(2000, new Interval(0, 1000));
        scene.wall("east", 700, 2600).row(1300, new Interval(400, 700)).row(2000);
        scene.holder("wide", area(600, 80, 80), 100, Use.WEEKLY, 1, false, Optional.empty())
                .holder("narrow", area(300, 80, 80), 100, Use.DAILY, 1, false, Optional.empty());

        assertThat(scene.lines())
                .containsExactly(
                        "wide: north row 1 at 0, on its own strip", "narrow: east row 1 at 400, on its own strip");
    }

    @Test
    void rowsOutOfReachWithAStudBehindComeBeforeRowsWithinReachWithout() {
        // studs at 200, 600; 100 mm out of reach cost a weekly thing less
        var scene = new Scene();
        scene.wall("north", 1000, 2600).row(1300, new Interval(210, 590)).row(1700, new Interval(210, 1000));
        scene.holder("rack", area(300, 80, 80), 100);

        assertThat(scene.arranged().hung().get(0).row()).isEqualTo(2);
    }

    @Test
    void aPlaceIsRoundedToWholeMillimetres() {
        var scene = new Scene();
        scene.wall("north", 1000, 2400)
                .zone(Kind.OUTLET, new Rect(0, 1200, 100.4, 1400), 0)
                .rows(1300);
        scene.holder("rack", area(100, 80, 80), 100);

        assertThat(scene.arranged().hung().get(0).x()).isEqualTo(101);
    }

    @Test
    void aPlaceThatIsFreeOnlyExactlyStays() {
        var scene = new Scene();
        scene.wall("north", 1000, 2400).row(1300, new Interval(100.4, 550.6));
        scene.holder("rack", area(450, 80, 80), 100);

        assertThat(scene.arranged().hung().get(0).x()).isBetween(100.4, 100.6);
    }

    @Test
    void marksOfATapeAreTakenNearestFirstAndOnlyWhereFree() {
        var free = new Interval(9.9, 11);

        assertThat(Tape.of(Units.MM).near(10.7, free)).containsExactly(11.0, 10.0);
        assertThat(Tape.of(Units.MM).near(10.7, new Interval(9.9, 10.8))).containsExactly(10.0);
        assertThat(Tape.of(Units.INCH).near(26, new Interval(20, 30))).containsExactly(25.4, 28.575);
    }
}
