package org.standwright.viewer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.MemoryScreen;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;
import org.testfx.util.WaitForAsyncUtils;

class FrontPaneTest {
    private static final String PLANER = Sample.stand("planer-stand");
    /** Builds at once; checks and plans nothing. */
    private static final Threads AT_ONCE = new Threads(Runnable::run, Runnable::run, work -> {});

    private Desk desk;
    private MemoryScreen screen;

    private void show(Threads threads) {
        desk = new Desk(threads, Optional.empty(), Opened.fresh("Planer stand", PLANER), fault -> {
            throw new IllegalStateException(fault);
        });
        screen = MemoryScreen.show(() -> new FrontPane(desk));
        screen.run(() -> face().requestFocus());
    }

    private Face face() {
        return (Face) screen.scene().lookup(".face");
    }

    private String words(String styleClass) {
        return screen.get(() -> {
            var label = (Label) screen.scene().lookup(".hand-pane " + styleClass);
            return label.isVisible() ? label.getText() : "";
        });
    }

    private String text() {
        return screen.get(() -> desk.documentProperty().get().text());
    }

    private List<String> history() {
        return screen.get(() -> desk.historyProperty().get().states().stream()
                .skip(1)
                .map(state -> state.what())
                .toList());
    }

    /** On the screen, of a handle. */
    private Point2D at(String handle) {
        return screen.get(() -> {
            var area = face().handle(handle).orElseThrow().area();
            var seen = face().scale().seen(area);
            return face().localToScreen(seen.getCenterX(), seen.getCenterY());
        });
    }

    private double pixels(double mm) {
        return screen.get(() -> face().scale().factor() * mm);
    }

    private void pull(String handle, double right, double down) {
        var at = at(handle);
        screen.hands().moveTo(at.getX(), at.getY()).press(MouseButton.PRIMARY);
        screen.hands().moveBy(pixels(right) / 2, pixels(down) / 2).moveBy(pixels(right) / 2, pixels(down) / 2);
        pulse();
    }

    private void pulse() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** What is dragged is followed at the next pulse. */
    private void eventually(Supplier<Boolean> holds) {
        try {
            WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, holds::get);
        } catch (TimeoutException e) {
            throw new AssertionError("it does not happen; the text is " + text(), e);
        }
    }

    /** The first whole number of mm that stands there in the text. */
    private int written(String pattern) {
        var found = Pattern.compile(pattern).matcher(text());
        assertThat(found.find()).as(text()).isTrue();
        return Integer.parseInt(found.group(1));
    }

    @Test
    void showsADragAndMakesOneEditOfIt() {
        show(AT_ONCE);

        pull("the gap between drawer 1.2 and 1.3", 0, 30);

        eventually(() -> !text().equals(PLANER));
        int upper = written("(\\d+) mm\", \"\\d+ mm\"");
        assertThat(upper).isBetween(190, 200);
        assertThat(history()).isEmpty();
        assertThat(words(".sizes")).startsWith("drawer 1.2: " + upper + " mm\ndrawer 1.3: " + (330 - upper) + " mm");
        screen.hands().release(MouseButton.PRIMARY);
        pulse();
        assertThat(history()).containsExactly("Move the gap between drawer 1.2 and 1.3");
        assertThat(text()).contains("\"fronts\": [\"" + upper + " mm\", \"" + (330 - upper) + " mm\"]");
    }

    @Test
    void escapesFromADrag() {
        show(AT_ONCE);
        pull("the partition between bay 1 and 2", 20, 0);
        eventually(() -> !text().equals(PLANER));
        assertThat(written("\"width\": \"(\\d+) mm\", \"contents\"")).isBetween(415, 425);

        screen.hands().push(KeyCode.ESCAPE);
        screen.hands().release(MouseButton.PRIMARY);
        pulse();

        assertThat(text()).isEqualTo(PLANER);
        assertThat(history()).isEmpty();
    }

    @Test
    void keepsTheLastThatCouldBeBuilt() {
        show(AT_ONCE);

        pull("the gap between drawer 1.2 and 1.3", 0, -40);
        eventually(() -> !text().equals(PLANER));
        screen.hands().moveBy(0, -pixels(80));

        eventually(() -> words(".sizes").contains("cannot be built"));
        assertThat(words(".refused")).contains("too low for a box");
        screen.hands().release(MouseButton.PRIMARY);
        pulse();
        assertThat(history()).containsExactly("Move the gap between drawer 1.2 and 1.3");
        assertThat(screen.get(() -> desk.problemsProperty().get())).isEmpty();
    }

    @Test
    void movesStepByStepAsOneEdit() {
        show(AT_ONCE);
        screen.run(() -> desk.pickedProperty().set(Optional.of("drawer 1.2 left side")));

        screen.hands().press(KeyCode.CONTROL);
        for (int i = 0; i < 3; i++) {
            screen.hands().push(KeyCode.CONTROL, KeyCode.DOWN);
        }
        pulse();
        screen.hands().release(KeyCode.CONTROL);
        pulse();

        assertThat(text()).contains("\"fronts\": [\"168 mm\", \"162 mm\"]");
        assertThat(history()).isNotEmpty().allMatch("Move the gap between drawer 1.2 and 1.3"::equals);
    }

    @Test
    void picksWithArrowsAndTellsTheOtherPanes() {
        show(AT_ONCE);

        screen.hands().push(KeyCode.DOWN).push(KeyCode.DOWN);
        pulse();

        assertThat(screen.get(() -> desk.pickedProperty().get())).contains("drawer 1.2 front");
        assertThat(words(".told")).isEqualTo("drawer 1.2, front 165 mm high");
        screen.hands().push(KeyCode.RIGHT);
        assertThat(screen.get(() -> desk.pickedProperty().get()).orElseThrow()).startsWith("drawer 2.");
        screen.hands().push(KeyCode.SPACE);
        assertThat(words(".told")).isEqualTo("bay 2, opening 266.9 mm wide");
        assertThat(screen.get(() -> desk.pickedProperty().get())).isEmpty();
    }

    @Test
    void doesWhatAKeyAsksFor() {
        show(AT_ONCE);
        screen.run(() -> desk.pickedProperty().set(Optional.of("drawer 1.2 front")));

        screen.hands().push(KeyCode.S);
        screen.hands().push(KeyCode.ALT, KeyCode.RIGHT);
        pulse();

        assertThat(history()).containsExactly("Split drawer 1.2 in two", "Swap bay 1 and 2");
    }

    @Test
    void tellsWhyAnEditIsNotMade() {
        show(AT_ONCE);
        screen.run(() -> desk.pickedProperty().set(Optional.of("drawer 1.1 front")));

        screen.hands().push(KeyCode.S);
        pulse();

        assertThat(words(".refused")).contains("Drawer 1.1 has a front of 43 mm, too low");
        assertThat(text()).isEqualTo(PLANER);
        assertThat(history()).isEmpty();
        screen.hands().push(KeyCode.ALT, KeyCode.UP);
        assertThat(words(".refused")).contains("uppermost");
    }

    @Test
    void waitsForTheAnswerBeforeItMakesAnEdit() {
        var waiting = new ArrayDeque<Runnable>();
        show(new Threads(Runnable::run, waiting::add, work -> {}));
        screen.run(() -> waiting.remove().run());
        screen.run(() -> face().requestFocus());
        screen.run(() -> desk.pickedProperty().set(Optional.of("drawer 1.2 front")));

        screen.hands().push(KeyCode.S);
        pulse();

        assertThat(history()).isEmpty();
        screen.run(() -> waiting.remove().run());
        assertThat(history()).containsExactly("Split drawer 1.2 in two");
    }
}
