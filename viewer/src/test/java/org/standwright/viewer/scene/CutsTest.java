package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.shape.TriangleMesh;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Pose;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

class CutsTest {
    private static Scenery planer;

    @BeforeAll
    static void build() {
        planer = Presets.scenery(Presets.stand("planer-stand"));
    }

    private static Cuts cuts(SectionPlane plane) {
        return Cuts.of(planer, Pose.closed(planer.assembly()), plane);
    }

    @Test
    void tellsWhatIsKeptWhatIsCutAndWhatIsGone() {
        double y = planer.assembly().box().centre().y();
        var cuts = cuts(new SectionPlane(Across.Y, y, Kept.HIGHER));

        assertThat(cuts.whole()).contains("back").doesNotContain("drawer 1.1 front");
        assertThat(cuts.cut()).containsKeys("left side", "drawer 1.1 left side").doesNotContainKey("drawer 1.1 front");
    }

    @Test
    void keepsEverythingBeyondAPlaneBeforeAll() {
        var cuts = cuts(new SectionPlane(Across.X, planer.assembly().box().min().x() - 10, Kept.HIGHER));

        assertThat(cuts.whole()).hasSize(planer.boards().size());
        assertThat(cuts.cut()).isEmpty();
    }

    @Test
    void drawsARimAroundTheCutFace() {
        var cut = cuts(new SectionPlane(Across.Z, 300, Kept.LOWER)).cut().get("right side");
        var cap = (TriangleMesh) cut.cap();

        assertThat(cap.getPoints().size()).isGreaterThanOrEqualTo(3 * 4);
        // an edge drawn as a line for every corner of the cut face at least
        assertThat(((TriangleMesh) cut.rest().lines()).getFaces().size() / 6)
                .isGreaterThanOrEqualTo(cap.getPoints().size() / 3);
    }

    @Test
    void drawsEqualBoardsThatAreCutAlikeOnce() {
        var cuts = cuts(new SectionPlane(Across.Y, 250, Kept.HIGHER));

        assertThat(cuts.cut().values().stream()
                        .map(cut -> cut.rest().faces())
                        .distinct()
                        .count())
                .isLessThan(cuts.cut().size());
    }
}
