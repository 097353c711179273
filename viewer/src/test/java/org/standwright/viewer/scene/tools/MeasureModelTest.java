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

    /** On the right of a board, or on the left, a little above its middle. */
    private Optional<Hit> beside(String label, boolean right) {
        var board = scene.solid(label).orElseThrow();
        var box = board.part().part().blank(); // replaced below
        return Optional.empty();
    }

    private String words() {
        return model.readingProperty().get().words(Units.MM);
    }
}
