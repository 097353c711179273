package org.standwright.viewer.scene.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.around.Around;

class AroundModelTest {
    private final AroundModel model = new AroundModel();

    @Test
    void showsTheFloorFirstAndPersonAndTheWayOfTheBoardsWhenAskedTo() {
        var around = Around.of(Sample.stand("planer-stand").furniture());
        assertThat(model.seenFloor()).isEmpty();

        model.aroundProperty().set(Optional.of(around));

        assertThat(model.seenFloor()).contains(around.floor());
        assertThat(model.seenPerson()).isEmpty();
        model.personProperty().set(true);
        assertThat(model.seenPerson()).contains(around.figure());
        assertThat(model.hasFeed().getValue()).isTrue();
        assertThat(model.hasWalls().getValue()).isFalse();
        assertThat(model.seenFeed()).isEmpty();
        model.feedProperty().set(true);
        assertThat(model.seenFeed()).isEqualTo(around.feed());
    }

    @Test
    void showsTheWallUntilItIsTurnedOff() {
        model.aroundProperty().set(Optional.of(Around.of(Sample.builtWall("door-wall"))));

        assertThat(model.hasWalls().getValue()).isTrue();
        assertThat(model.hasFeed().getValue()).isFalse();
        assertThat(model.seenWalls().orElseThrow()).hasSize(1);
        model.wallProperty().set(false);
        assertThat(model.seenWalls()).isEmpty();
    }

    /** So that nothing is drawn again that has not changed. */
    @Test
    void isTheSameAroundTheSameFurniture() {
        assertThat(Around.of(Sample.builtWall("door-wall"))).isEqualTo(Around.of(Sample.builtWall("door-wall")));
        assertThat(Around.of(Sample.builtWall("door-wall"))).isNotEqualTo(Around.of(Sample.builtWall("corner-walls")));
    }
}
