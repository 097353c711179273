package org.standwright.viewer.scene.tools;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.design.built.Stand;
import org.standwright.geom.Interval;
import org.standwright.viewer.scene.Sample;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.Scenery;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

class SectionModelTest {
    private static Sample<Stand> planer;
    private static Sample<Stand> grinder;

    private final SceneModel scene = new SceneModel();
    private final SectionModel model = new SectionModel(scene);

    @BeforeAll
    static void build() {
        planer = Sample.stand("planer-stand");
        grinder = Sample.stand("grinder-stand");
    }

    @BeforeEach
    void showAStand() {
        scene.show(scenery(planer));
    }

    private static Scenery scenery(Sample<Stand> sample) {
        return Scenery.of(sample.furniture().assembly(), sample.solids());
    }

    @Test
    void cutsNothingUntilItIsTurnedOn() {
        model.atProperty().set(100);
        assertThat(scene.sectionProperty().get()).isEmpty();

        model.onProperty().set(true);
        assertThat(scene.sectionProperty().get()).contains(new SectionPlane(Across.Y, 100, Kept.HIGHER));

        model.onProperty().set(false);
        assertThat(scene.sectionProperty().get()).isEmpty();
    }

    @Test
    void beginsInTheMiddleOfEveryAxis() {
        var box = planer.furniture().assembly().box();
        model.onProperty().set(true);
        assertThat(model.atProperty().get())
                .isEqualTo((box.min().y() + box.max().y()) / 2);

        model.acrossProperty().set(Across.X);

        assertThat(scene.sectionProperty().get())
                .contains(new SectionPlane(Across.X, (box.min().x() + box.max().x()) / 2, Kept.LOWER));
    }

    @Test
    void keepsTheOtherSide() {
        model.onProperty().set(true);

        model.keepOtherSide();

        assertThat(scene.sectionProperty().get().orElseThrow().kept()).isEqualTo(Kept.LOWER);
    }

    @Test
    void reachesAsFarAsDrawersAreOpen() {
        double closed = model.rangeProperty().get().from();

        scene.openAll();

        assertThat(model.rangeProperty().get().from()).isLessThan(closed - 100);
    }

    @Test
    void staysWithinTheFurniture() {
        var range = model.rangeProperty().get();
        model.move(1e6);
        assertThat(model.atProperty().get()).isEqualTo(range.to());
        model.move(-1e7);
        assertThat(model.atProperty().get()).isEqualTo(range.from());
    }

    @Test
    void comesBackToFurnitureThatGotSmaller() {
        model.acrossProperty().set(Across.X);
        model.move(1e6);

        scene.show(scenery(grinder));

        var box = grinder.furniture().assembly().box();
        assertThat(box.max().x())
                .isLessThan(planer.furniture().assembly().box().max().x());
        assertThat(model.rangeProperty().get())
                .isEqualTo(new Interval(box.min().x(), box.max().x()));
        assertThat(model.atProperty().get()).isEqualTo(box.max().x());
    }
}
