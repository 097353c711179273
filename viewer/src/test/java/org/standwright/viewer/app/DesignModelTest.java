package org.standwright.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.file.text.DesignFileException;

class DesignModelTest {
    private static OpenedDesign demo;

    private final DesignModel model = new DesignModel();

    @BeforeAll
    static void openTheDemo() {
        demo = OpenedDesign.open(Optional.empty());
    }

    @Test
    void startsEmpty() {
        assertThat(model.designProperty().get()).isEmpty();
        assertThat(model.problemProperty().get()).isEmpty();
    }

    @Test
    void showsTheDemoWithItsSizes() {
        model.show(demo);

        assertThat(model.designProperty().get()).map(OpenedDesign::name).contains("Planer stand");
        assertThat(model.designProperty().get().orElseThrow().sizes())
                .startsWith("Working height 900 mm · outside 720 × ");
    }

    @Test
    void asksForPatienceUntilThereIsAStandOrAProblem() {
        var sizes = model.sizes();

        assertThat(sizes.getValue()).isEqualTo("One moment …");
        model.refuse("no such file");
        assertThat(sizes.getValue()).isEmpty();
        model.show(demo);
        assertThat(sizes.getValue()).isEqualTo(demo.sizes());
    }

    @Test
    void hasEveryPartOfTheDemoAndTheBoughtThings() {
        assertThat(demo.scenery().boards()).hasSizeGreaterThan(50);
        assertThat(demo.scenery().blocks())
                .extracting(block -> block.kind().name())
                .contains("MACHINE", "CASTER", "SLIDE");
    }

    @Test
    void takesTheSolidsOfTheSameBoardsOverWhenItIsOpenedAgain() {
        var again = demo.next(Optional.empty());

        assertThat(again.product()).isNotSameAs(demo.product());
        for (int i = 0; i < demo.product().solids().solids().size(); i++) {
            assertThat(again.product().solids().solids().get(i).solid())
                    .isSameAs(demo.product().solids().solids().get(i).solid());
        }
    }

    @Test
    void keepsTheStandWhenTheNextOneIsRefused() {
        model.show(demo);
        model.refuse("no such file");

        assertThat(model.designProperty().get()).contains(demo);
        assertThat(model.problemProperty().get()).isEqualTo("no such file");
    }

    @Test
    void forgetsTheProblemWhenAStandIsShown() {
        model.refuse("no such file");
        model.show(demo);

        assertThat(model.problemProperty().get()).isEmpty();
    }

    @Test
    void namesAFileThatIsNotThere(@TempDir Path folder) {
        var missing = folder.resolve("no-stand.json");

        assertThatThrownBy(() -> OpenedDesign.open(Optional.of(missing)))
                .isInstanceOf(DesignFileException.class)
                .hasMessageContaining("no-stand.json");
    }

    @Test
    void tellsLineAndColumnOfWhatIsWrongInAFile(@TempDir Path folder) throws IOException {
        var broken = Files.writeString(folder.resolve("broken.json"), "{\n  \"version\": 1,\n}\n");

        assertThatThrownBy(() -> OpenedDesign.open(Optional.of(broken)))
                .isInstanceOf(DesignFileException.class)
                .hasMessageContaining("broken.json line 3");
    }
}
