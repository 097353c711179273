package org.standwright.viewer.scene.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.design.built.Stand;
import org.standwright.geom.Vec3;
import org.standwright.unit.Units;
import org.standwright.viewer.scene.Hit;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.Scenery;

class MeasureModelTest {
    private static final String LEFT = "drawer 1.1 left side";
    private static final String RIGHT = "drawer 1.1 right side";
    private static Sample<Stand> planer;

    private final SceneModel scene = new SceneModel();
    private final MeasureModel model = new MeasureModel(scene);

    @BeforeAll
    static void build() {
        planer = Sample.stand("planer-stand");
    }

    @BeforeEach
    void showAStand() {
        scene.show(scenery(planer));
        model.onProperty().set(true);
    }

    private static Scenery scenery(Sample<Stand> sample) {
        return Scenery.of(sample.furniture().assembly(), sample.solids());
    }

    private void click(String label, double share) {
        model.take(Optional.of(new Hit(label, on(label, share))));
    }

    /** On the left of a board for 0, on the right for 1; clear of the groove for the bottom. */
    private Vec3 on(String label, double share) {
        var board = scene.solid(label).orElseThrow();
        var box = scene.pose().orElseThrow().moved(board.group(), board.part().box());
        var size = box.size();
        return box.min().plus(new Vec3(share * size.x(), 0.5 * size.y(), 0.7 * size.z()));
    }

    private String words() {
        return model.readingProperty().get().words(Units.MM);
    }

    @Test
    void measuresTheInsideOfADrawerBetweenTwoClicks() {
        assertThat(words()).isEqualTo("Click a face of a board.");
        click(LEFT, 1);
        assertThat(words()).isEqualTo("Click a second face.");
        click(RIGHT, 0);

        assertThat(words()).isEqualTo("350 mm between them, left to right");
        assertThat(model.readingProperty().get().faces()).hasSize(2);
        assertThat(model.readingProperty().get().words(Units.INCH)).startsWith("13 25/32 in");
    }

    @Test
    void beginsAnewWithTheThirdClick() {
        click(LEFT, 1);
        click(RIGHT, 0);
        click(RIGHT, 1);

        assertThat(words()).isEqualTo("Click a second face.");
    }

    @Test
    void measuresAnOpenDrawerWhereItStands() {
        scene.openAll();
        click(LEFT, 1);
        click(RIGHT, 0);
        double open = model.readingProperty()
                .get()
                .measured()
                .orElseThrow()
                .line()
                .from()
                .y();

        scene.closeAll();

        assertThat(model.readingProperty()
                        .get()
                        .measured()
                        .orElseThrow()
                        .line()
                        .from()
                        .y())
                .isGreaterThan(open + 100);
    }

    @Test
    void leavesClicksAloneWhenItIsOff() {
        model.onProperty().set(false);

        assertThat(model.take(Optional.of(new Hit(LEFT, on(LEFT, 1))))).isFalse();
        assertThat(model.readingProperty().get().faces()).isEmpty();
    }

    @Test
    void marksNothingBesideABoardNorOnWhatIsBought() {
        model.take(Optional.empty());
        model.take(Optional.of(new Hit("no such board", Vec3.ZERO)));
        model.take(Optional.of(new Hit(LEFT, on(LEFT, 1).plus(new Vec3(1, 0, 0)))));

        assertThat(model.readingProperty().get().faces()).isEmpty();
    }

    @Test
    void takesTheMarksAwayFirstAndThenEnds() {
        click(LEFT, 1);

        model.cancel();
        assertThat(model.readingProperty().get().faces()).isEmpty();
        assertThat(model.onProperty().get()).isTrue();

        model.cancel();
        assertThat(model.onProperty().get()).isFalse();
    }

    @Test
    void keepsMarksOnBoardsThatStayTheSame() {
        click(LEFT, 1);
        click(RIGHT, 0);

        scene.show(scenery(planer));
        assertThat(words()).startsWith("350 mm");

        scene.show(scenery(Sample.stand("grinder-stand")));
        assertThat(words()).isEqualTo("Click a face of a board.");
    }
}
