package org.standwright.viewer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Point2D;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.MemoryScreen;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;
import org.testfx.util.WaitForAsyncUtils;

class ElevationPaneTest {
    private static final String WALLS = Sample.wall("corner-walls");
    /** Builds at once; checks and plans nothing. */
    private static final Threads AT_ONCE = new Threads(Runnable::run, Runnable::run, work -> {});

    private Desk desk;
    private MemoryScreen screen;

    private void show(String text) {
        desk = new Desk(AT_ONCE, Optional.empty(), Opened.fresh("Walls", text), fault -> {
            throw new IllegalStateException(fault);
        });
        screen = MemoryScreen.show(() -> new ElevationPane(desk));
        screen.run(() -> face().requestFocus());
    }

    private Face face() {
        return (Face) screen.scene().lookup(".face");
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

    private void pull(String handle, double right, double down) {
        Point2D at = screen.get(() -> {
            var seen = face().scale().seen(face().handle(handle).orElseThrow().area());
            return face().localToScreen(seen.getCenterX(), seen.getCenterY());
        });
        double factor = screen.get(() -> face().scale().factor());
        screen.hands().moveTo(at.getX(), at.getY()).press(MouseButton.PRIMARY);
        screen.hands().moveBy(factor * right / 2, factor * down / 2).moveBy(factor * right / 2, factor * down / 2);
        try {
            WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, () -> !text().equals(WALLS));
        } catch (TimeoutException e) {
            throw new AssertionError("nothing moves with " + handle, e);
        }
    }

    @Test
    void hangsAHolderOnAnotherRow() {
        show(WALLS);

        pull("mask pegs", 0, -280);

        assertThat(history()).isEmpty();
        assertThat(text()).contains("\"place\": { \"wall\": \"north\", \"row\":");
        screen.hands().release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(history()).containsExactly("Move mask pegs");
        assertThat(screen.get(() -> desk.problemsProperty().get())).isEmpty();
    }

    @Test
    void resizesAnObstacleAtItsEdge() {
        show(WALLS);

        pull("the upper edge of door", 0, -60);
        screen.hands().release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(history()).containsExactly("Move the upper edge of door");
        assertThat(text()).doesNotContain("\"height\": \"2050 mm\"").contains("\"swing\": { \"hinges\": \"right\"");
    }

    @Test
    void putsEverythingBackOnEscape() {
        show(WALLS);
        pull("outlet", 0, -100);

        screen.hands().push(KeyCode.ESCAPE);
        screen.hands().release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(text()).isEqualTo(WALLS);
        assertThat(history()).isEmpty();
    }

    @Test
    void movesWhatIsPickedByKeys() {
        show(WALLS);
        screen.run(() -> desk.pickedProperty().set(Optional.of("sander shelf bottom")));

        screen.hands().push(KeyCode.CONTROL, KeyCode.RIGHT);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(history()).containsExactly("Move sander shelf");
        assertThat(text()).contains("\"place\": { \"wall\": \"west\", \"row\": 3, \"x\": \"2051 mm\" }");
        screen.hands().push(KeyCode.P);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(history()).containsExactly("Move sander shelf", "Let a place be found for sander shelf");
    }

    @Test
    void listsWhatHangsNowhere() {
        show(WALLS.replace("\"use\": \"yearly\"", "\"use\": \"unused\""));
        var line = screen.get(() -> (Button) screen.scene().lookup(".unhung"));

        assertThat(line.getText()).startsWith("oil shelf: ");
        screen.run(line::fire);
        screen.hands().push(KeyCode.DELETE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(history()).containsExactly("Remove oil shelf");
    }
}
