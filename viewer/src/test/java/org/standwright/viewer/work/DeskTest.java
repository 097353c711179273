package org.standwright.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.unit.Units;
import org.standwright.viewer.document.Document;

class DeskTest {
    private static final String DEMO = PresetLibrary.of(Path.of(""), Optional.empty())
            .find(FileKind.STAND, "planer-stand")
            .orElseThrow()
            .text();

    /** Checks and plans nothing. */
    private static final Threads ONLY_FAST = new Threads(Runnable::run, Runnable::run, work -> {});

    private final List<Throwable> faults = new ArrayList<>();

    private Desk desk(Threads threads) {
        return new Desk(threads, Optional.empty(), Opened.fresh("Planer stand", DEMO), faults::add);
    }

    private static String higher(String text) {
        return text.replace("\"workingHeight\": \"900 mm\"", "\"workingHeight\": \"930 mm\"");
    }

    @Test
    void worksTheFirstDesignOutToItsEnd() {
        var desk = desk(Threads.none());

        assertThat(faults).isEmpty();
        assertThat(desk.problemsProperty().get()).isEmpty();
        assertThat(desk.builtProperty().get()).isPresent();
        assertThat(desk.jobProperty().get()).isPresent();
        assertThat(desk.productProperty().get()).isPresent();
        assertThat(desk.stageProperty().get()).isEqualTo(Stage.DONE);
        assertThat(desk.changedProperty().get()).isFalse();
    }

    @Test
    void followsAnEditAndTakesItBack() {
        var desk = desk(ONLY_FAST);
        var before = desk.documentProperty().get();

        desk.edit("Change working height", higher(DEMO));

        assertThat(desk.builtProperty()
                        .get()
                        .orElseThrow()
                        .furniture()
                        .assembly()
                        .box()
                        .size()
                        .z())
                .isGreaterThan(0);
        assertThat(desk.changedProperty().get()).isTrue();
        assertThat(desk.historyProperty().get().undoes()).contains("Change working height");
        desk.undo();
        assertThat(desk.documentProperty().get()).isSameAs(before);
        assertThat(desk.changedProperty().get()).isFalse();
        desk.redo();
        assertThat(desk.documentProperty().get().text()).isEqualTo(higher(DEMO));
    }

    @Test
    void keepsTheLastGoodDesignWhileTheTextIsWrong() {
        var desk = desk(ONLY_FAST);
        var good = desk.builtProperty().get();

        desk.edit("Change text", DEMO.replace("900 mm", "900 elephants"));

        assertThat(desk.builtProperty().get()).isSameAs(good);
        assertThat(desk.problemsProperty().get())
                .singleElement()
                .satisfies(problem -> assertThat(problem.field()).isEqualTo("workingHeight"));
        desk.undo();
        assertThat(desk.problemsProperty().get()).isEmpty();
    }

    @Test
    void saysWhereADesignCannotBeBuilt() {
        var desk = desk(ONLY_FAST);

        desk.edit("Change working height", DEMO.replace("900 mm", "300 mm"));

        assertThat(desk.stageProperty().get()).isEqualTo(Stage.REFUSED);
        assertThat(desk.problemsProperty().get().get(0).message()).contains("this design line");
    }

    @Test
    void showsAPreviewWithoutMakingItAState() {
        var desk = desk(ONLY_FAST);

        desk.preview(higher(DEMO));

        assertThat(desk.documentProperty().get().text()).isEqualTo(higher(DEMO));
        assertThat(desk.historyProperty().get().states()).hasSize(1);
        desk.drop();
        assertThat(desk.documentProperty().get().text()).isEqualTo(DEMO);
        desk.preview(higher(DEMO));
        desk.edit("Drag", higher(DEMO));
        assertThat(desk.historyProperty().get().states()).hasSize(2);
    }

    @Test
    void takesAPreviewBackWhenItEndsWhereItBegan() {
        var desk = desk(ONLY_FAST);
        desk.preview(higher(DEMO));

        desk.edit("Drag", DEMO);

        assertThat(desk.documentProperty().get().text()).isEqualTo(DEMO);
        assertThat(desk.historyProperty().get().states()).hasSize(1);
    }

    @Test
    void letsTheNewestRequestWin() {
        var waiting = new ArrayDeque<Runnable>();
        var seen = new ArrayList<Document>();
        var desk = desk(new Threads(Runnable::run, waiting::add, waiting::add));
        desk.builtProperty()
                .subscribe(now ->
                        now.ifPresent(built -> seen.add(desk.documentProperty().get())));

        for (int i = 0; i < 50; i++) {
            desk.edit("Change working height", DEMO.replace("900 mm", 900 + i + " mm"));
        }
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }

        assertThat(faults).isEmpty();
        assertThat(seen).singleElement().isSameAs(desk.documentProperty().get());
        assertThat(desk.stageProperty().get()).isEqualTo(Stage.DONE);
    }

    @Test
    void readsBackInOtherUnitsWithoutTouchingTheText() {
        var desk = desk(ONLY_FAST);

        desk.unitsProperty().set(Optional.of(Units.INCH));

        assertThat(desk.builtProperty().get().orElseThrow().units()).isEqualTo(Units.INCH);
        assertThat(desk.changedProperty().get()).isFalse();
    }

    @Test
    void knowsWhatIsSaved() {
        var desk = desk(ONLY_FAST);
        desk.edit("Change working height", higher(DEMO));

        desk.saved(Path.of("my-stand.json"));

        assertThat(desk.changedProperty().get()).isFalse();
        assertThat(desk.fileProperty().get()).contains(Path.of("my-stand.json"));
        desk.undo();
        assertThat(desk.changedProperty().get()).isTrue();
    }
}
