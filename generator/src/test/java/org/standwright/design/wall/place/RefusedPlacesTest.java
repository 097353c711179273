package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.wall.place.Scene.area;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things.Use;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;

/** Places that makers choose and that do not do. */
class RefusedPlacesTest {
    private static Scene scene() {
        var scene = new Scene();
        scene.wall("north", 2000, 2400)
                .zone(Kind.OUTLET, new Rect(900, 1100, 1000, 1300), 0)
                .rows(1200)
                .row(1500)
                .row(1800, new Interval(0, 500), new Interval(1500, 2000));
        return scene.holder("free", area(300, 80, 80), 100);
    }

    private static void refuses(Scene scene, String... words) {
        assertThatThrownBy(scene::arranged)
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContainingAll(words)
                .satisfies(refusal -> assertThat(((ImpossibleDesignException) refusal).field())
                        .isEqualTo("/holders/" + (scene.made().size() - 1) + "/place"));
    }

    @Test
    void aWallThatNobodyCalledSo() {
        refuses(
                scene().holder("rack", area(300, 80, 80), 100, new Spot("south", 1, 0)),
                "'rack' cannot hang on row 1 of wall 'south' at 0 mm: no wall is called so.",
                "The walls are 'north'.");
    }

    @Test
    void aRowThatTheWallHasNot() {
        refuses(
                scene().holder("rack", area(300, 80, 80), 100, new Spot("north", 4, 0)),
                "the wall has no such row. Rows with strips there are 1, 3.");
    }

    @Test
    void aRowWithoutStrips() {
        refuses(
                scene().holder("rack", area(300, 80, 80), 100, new Spot("north", 2, 0)),
                "this row has no strips on this wall");
    }

    @Test
    void aPlaceBetweenStrips() {
        refuses(
                scene().holder("rack", area(300, 80, 80), 100, new Spot("north", 3, 600)),
                "no strips lie under both ends and half of its hanger there.",
                "The nearest x on this row that would do is 200 mm.");
    }

    @Test
    void aPlaceBeforeAnOutlet() {
        refuses(
                scene().holder("rack", area(300, 80, 80), 100, new Spot("north", 1, 850)),
                "'outlet', or what it keeps free, is in the way.",
                "The nearest x on this row that would do is 1000 mm.");
    }

    @Test
    void aPlaceOnAnotherHolder() {
        refuses(
                scene().holder("first", area(300, 80, 80), 100, new Spot("north", 1, 300))
                        .holder("rack", area(200, 80, 80), 100, new Spot("north", 1, 610)),
                "'first' is in the way.",
                "The nearest x on this row that would do is 620 mm.");
    }

    @Test
    void theNearestPlaceAlsoAvoidsWhatIsHungByHandLater() {
        var scene = scene().holder("rack", area(300, 80, 80), 100, new Spot("north", 1, 850))
                .holder("later", area(300, 80, 80), 100, new Spot("north", 1, 1250));

        assertThatThrownBy(scene::arranged).hasMessageContaining("would do is 600 mm");
    }

    @Test
    void aPlaceWhereTheCeilingKeepsItFromBeingLiftedOff() {
        refuses(
                scene().holder("rack", area(300, 80, 590), 100, new Spot("north", 3, 0)),
                "it would reach beyond the wall, hung or lifted off.",
                "No place on this row would do; try another");
    }

    @Test
    void aPlaceAboveAStandForWhatIsFlammable() {
        var scene = new Scene();
        scene.wall("north", 2000, 2400)
                .zone(Kind.STAND, new Rect(0, 0, 800, 900), 700)
                .rows(1400);
        scene.holder("thinner", area(300, 80, 80), 100, Use.WEEKLY, 1, true, Optional.of(new Spot("north", 1, 100)));

        refuses(
                scene,
                "'stand', above which nothing flammable hangs, is in the way.",
                "The nearest x on this row that would do is 800 mm.");
    }
}
