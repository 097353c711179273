package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SceneModelTest {
    private static final String FRONT = "drawer 1.1 front";
    private static Scenery planer;
    private static Scenery table;

    private final SceneModel model = new SceneModel();

    @BeforeAll
    static void build() {
        planer = Presets.scenery(Presets.stand("planer-stand"));
        table = Presets.scenery(Presets.stand("table-saw-stand"));
    }

    @BeforeEach
    void showAStand() {
        model.viewpoint().resize(1000, 700);
        model.show(planer);
    }

    @Test
    void showsTheFinishedStandFirst() {
        assertThat(model.stepProperty().get()).isEqualTo(9);
        assertThat(planer.labels()).allMatch(model::isSeen);
    }

    @Test
    void showsWhatIsThereByNow() {
        model.stepProperty().set(1);

        assertThat(model.isSeen("left side")).isTrue();
        assertThat(model.isSeen(FRONT)).isFalse();
    }

    @Test
    void goesThroughTheStepsAndNoFurther() {
        model.stepBy(1);
        assertThat(model.stepProperty().get()).isEqualTo(9);
        model.stepBy(-3);
        assertThat(model.stepProperty().get()).isEqualTo(6);
        model.stepBy(-30);
        assertThat(model.stepProperty().get()).isEqualTo(1);
    }

    @Test
    void hidesThePickedPartAndShowsItAgain() {
        model.pickedProperty().set(Optional.of(FRONT));
        model.hidePicked();

        assertThat(model.isSeen(FRONT)).isFalse();
        assertThat(model.pickedProperty().get()).isEmpty();
        model.showAll();
        assertThat(model.isSeen(FRONT)).isTrue();
    }

    @Test
    void leavesOnlyThePickedPartWhenIsolated() {
        model.pickedProperty().set(Optional.of(FRONT));
        model.isolatePicked();

        assertThat(planer.labels()).filteredOn(model::isSeen).containsExactly(FRONT);
    }

    @Test
    void seesThroughAllButThePickedPart() {
        model.pickedProperty().set(Optional.of(FRONT));
        model.seeThroughProperty().set(true);

        assertThat(model.isGlass("left side")).isTrue();
        assertThat(model.isGlass(FRONT)).isFalse();
    }

    @Test
    void slidesTheDrawerOfAPartOpenAndClosed() {
        model.slide(FRONT);
        assertThat(model.open()).containsExactly(Map.entry("drawer 1.1", 1.0));
        model.slide("drawer 1.1 bottom");
        assertThat(model.isOpen()).isFalse();
    }

    @Test
    void leavesWhatDoesNotMoveWhereItIs() {
        model.slide("left side");

        assertThat(model.slides("left side")).isFalse();
        assertThat(model.open()).isEmpty();
    }

    @Test
    void opensAllAndClosesAll() {
        model.openAll();
        assertThat(model.open().keySet()).isEqualTo(planer.moving());
        model.closeAll();
        assertThat(model.isOpen()).isFalse();
    }

    @Test
    void takesThePoseFromExplosionAndShares() {
        model.explosionProperty().set(0.5);

        var pose = model.pose(planer, Map.of("drawer 1.1", 0.25));

        assertThat(pose.explosion()).isEqualTo(0.5);
        assertThat(pose.open()).containsExactly(Map.entry("drawer 1.1", 0.25));
    }

    @Test
    void keepsWhatIsStillThereWhenSomethingElseIsShown() {
        model.hidden().add(FRONT);
        model.hidden().add("bottom");
        model.openAll();

        model.show(table);

        assertThat(table.labels()).containsAll(model.hidden());
        assertThat(table.moving()).containsAll(model.open().keySet());
        assertThat(model.stepProperty().get())
                .isEqualTo(model.stepsProperty().get().size());
    }

    @Test
    void keepsTheEyeWhereItWasPutByHand() {
        model.viewpoint().turn(30, 10);
        var orbit = model.viewpoint().orbitProperty().get();

        model.show(table);

        assertThat(model.viewpoint().orbitProperty().get()).isEqualTo(orbit);
    }

    @Test
    void fitsWhatIsShownAsLongAsTheEyeIsNotMoved() {
        var orbit = model.viewpoint().orbitProperty().get();

        model.show(table);

        assertThat(model.viewpoint().orbitProperty().get()).isNotEqualTo(orbit);
    }
}
