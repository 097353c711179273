package org.standwright.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.file.FileKind;
import org.standwright.viewer.MemoryScreen;
import org.standwright.viewer.document.Remembered;
import org.standwright.viewer.document.Unsaved;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Stage;
import org.standwright.viewer.work.Threads;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window, driven by mouse and keyboard, on a screen in memory that cannot draw in 3D. */
class WindowInMemoryTest {
    @TempDir
    private Path folder;

    private final AnsweringDialogs dialogs = new AnsweringDialogs();
    private static MemoryScreen screen;
    private Window window;

    @BeforeAll
    static void startTheScreen() {
        screen = MemoryScreen.show(javafx.scene.layout.Pane::new);
    }

    @AfterEach
    void close() {
        screen.run(window::close);
    }

    private void open(Opened design) {
        screen.run(() -> {
            window = new Window(new Setup(
                    design,
                    Optional.empty(),
                    folder.resolve("state"),
                    Threads.ofApplication(),
                    Runnable::run,
                    owner -> dialogs));
            window.show(code -> {});
        });
        untilDone();
    }

    private void untilDone() {
        screen.await(() -> {
            var stage = window.desk().stageProperty().get();
            return stage == Stage.DONE || stage == Stage.REFUSED;
        });
    }

    private String text() {
        return screen.get(() -> window.desk().documentProperty().get().text());
    }

    private void press(KeyCode... keys) {
        screen.run(() -> window.scene().getWindow().requestFocus());
        screen.hands().push(keys);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Stream<Node> nodes() {
        var all = new ArrayList<Node>();
        screen.run(() -> gather(window.scene().getRoot(), all));
        return all.stream();
    }

    private static void gather(Node node, ArrayList<Node> all) {
        all.add(node);
        if (node instanceof javafx.scene.Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> gather(child, all));
        }
    }

    private Stream<Button> cures() {
        return nodes().filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(button -> button.getText() != null && button.getText().startsWith("Apply: "));
    }

    private Stream<String> words() {
        return nodes().filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText())
                .filter(words -> words != null);
    }

    private TextField fieldWith(String value) {
        return nodes().filter(TextField.class::isInstance)
                .map(TextField.class::cast)
                .filter(field -> value.equals(field.getText()))
                .findFirst()
                .orElseThrow();
    }

    private void type(TextField field, String typed) {
        screen.run(field::requestFocus);
        screen.run(() -> field.setText(typed));
        screen.hands().push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void saysThatItCannotDrawIn3dAndShowsTheRest() {
        open(Demo.opened());

        assertThat(words()).anyMatch(words -> words.contains("cannot draw in 3D"));
        for (var pane : screen.get(() -> window.views().names())) {
            screen.run(() -> window.views().show(pane));
            assertThat(screen.get(() -> window.views().shown())).as(pane).isNotNull();
        }
        assertThat(dialogs.said).isEmpty();
    }

    @Test
    void followsWhatIsTypedAndTakesItBack() {
        open(Demo.opened());
        var before = text();

        type(fieldWith("900 mm"), "940 mm");
        untilDone();

        assertThat(text()).isEqualTo(before.replace("\"900 mm\"", "\"940 mm\""));
        assertThat(words()).anyMatch(words -> words.startsWith("Working height 940 mm"));
        press(KeyCode.CONTROL, KeyCode.Z);
        untilDone();
        assertThat(text()).isEqualTo(before);
        assertThat(words()).anyMatch(words -> words.startsWith("Working height 900 mm"));
    }

    @Test
    void saysBesideTheFieldWhatIsWrongAndKeepsTheLastDesign() {
        open(Demo.opened());

        type(fieldWith("900 mm"), "900 elephants");
        untilDone();

        assertThat(words().filter(words -> words.contains("elephants"))).hasSizeGreaterThanOrEqualTo(2);
        assertThat(words()).anyMatch(words -> words.contains("You see the last design that could be built."));
        assertThat(words()).anyMatch(words -> words.startsWith("Working height 900 mm"));
    }

    @Test
    void readsBackInInchesAndTurnsDark() {
        open(Demo.opened());
        var before = text();

        press(KeyCode.CONTROL, KeyCode.U);
        untilDone();
        press(KeyCode.CONTROL, KeyCode.L);

        assertThat(words()).anyMatch(words -> words.startsWith("Working height 35 7/16 in"));
        assertThat(text()).isEqualTo(before);
        assertThat(screen.get(() ->
                        window.scene().getRoot().getPseudoClassStates().contains(PseudoClass.getPseudoClass("dark"))))
                .isTrue();
    }

    @Test
    void appliesACureThatCanBeTakenBack() {
        open(Demo.preset(FileKind.STAND, "lathe-stand"));
        var before = text();
        var cure = nodes().filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(button -> button.getText() != null && button.getText().startsWith("Apply: "))
                .findFirst()
                .orElseThrow();
        var words = cure.getText();

        screen.run(cure::fire);
        screen.await(() -> !text().equals(before));
        untilDone();

        assertThat(dialogs.said).isEmpty();
        assertThat(screen.get(() -> window.desk().problemsProperty().get())).isEmpty();
        assertThat(words()).doesNotContain(words);
        press(KeyCode.CONTROL, KeyCode.Z);
        untilDone();
        assertThat(text()).isEqualTo(before);
        assertThat(words()).contains(words);
    }

    @Test
    void savesUnderANameAndOpensAgain() throws IOException {
        open(Demo.opened());
        type(fieldWith("900 mm"), "940 mm");
        untilDone();
        var file = folder.resolve("my stand.json");
        dialogs.toSave = Optional.of(file);

        press(KeyCode.CONTROL, KeyCode.S);

        assertThat(file).hasContent(text());
        assertThat(dialogs.said).containsExactly("save as planer-stand.json");
        assertThat(words()).contains("saved");
        Files.writeString(file, text().replace("940 mm", "920 mm"));
        dialogs.toOpen = Optional.of(file);
        press(KeyCode.CONTROL, KeyCode.O);
        untilDone();
        assertThat(words()).anyMatch(words -> words.startsWith("Working height 920 mm"));
    }

    @Test
    void asksBeforeItLeavesWhatIsNotSaved() {
        open(Demo.opened());
        type(fieldWith("900 mm"), "940 mm");
        untilDone();
        var changed = text();

        screen.run(window::requestClose);

        assertThat(dialogs.said).singleElement().asString().contains("not saved");
        assertThat(screen.get(() -> window.scene().getWindow().isShowing())).isTrue();
        assertThat(text()).isEqualTo(changed);
    }

    @Test
    void keepsWhatIsNotSavedForAfterAKill() {
        open(Demo.opened());
        type(fieldWith("900 mm"), "940 mm");
        var own = folder.resolve("state/unsaved-" + ProcessHandle.current().pid() + ".json");

        screen.await(() -> Files.exists(own));

        var kept = new Remembered<>(own, Unsaved.class).recall().orElseThrow();
        assertThat(kept.text()).isEqualTo(text()).contains("940 mm");
        assertThat(Keeper.left(folder.resolve("state")))
                .as("of a process that lives")
                .isEmpty();
        rename(own, "unsaved-999999999.json");
        assertThat(Keeper.left(folder.resolve("state")))
                .map(Opened::text)
                .as("of a process that is gone")
                .contains(kept.text());
    }

    private static void rename(Path file, String name) {
        try {
            Files.move(file, file.resolveSibling(name));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void keepsTheWorkWhenTheProgramFails() {
        open(Demo.opened());
        type(fieldWith("900 mm"), "940 mm");

        screen.run(() -> window.fault(new IllegalStateException("a fault for this test")));

        assertThat(dialogs.said).singleElement().asString().contains("Your work is kept");
        assertThat(folder.resolve("state/unsaved-" + ProcessHandle.current().pid() + ".json"))
                .exists();
    }

    @Test
    void opensAFileThatIsWrongSoThatItCanBeMended() throws IOException {
        open(Demo.opened());
        var broken = Files.writeString(folder.resolve("broken.json"), "{\n  \"version\": 1,\n}\n");
        dialogs.toOpen = Optional.of(broken);

        press(KeyCode.CONTROL, KeyCode.O);
        untilDone();

        assertThat(text()).isEqualTo("{\n  \"version\": 1,\n}\n");
        assertThat(words()).anyMatch(words -> words.contains("broken.json line 3"));
        assertThat(nodes().filter(Label.class::isInstance)).isNotEmpty();
    }

    @Test
    void tellsThatAFileIsNotThere() {
        open(Demo.opened());
        dialogs.toOpen = Optional.of(folder.resolve("nowhere.json"));

        press(KeyCode.CONTROL, KeyCode.O);

        assertThat(dialogs.said)
                .singleElement()
                .asString()
                .contains("nowhere.json")
                .contains("no such file");
    }
}
