package org.standwright.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Optional;
import java.util.Queue;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.MemoryScreen;

class LaterTest {
    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final ArrayList<String> worked = new ArrayList<>();
    private final SimpleObjectProperty<Optional<String>> value = new SimpleObjectProperty<>(Optional.empty());
    private MemoryScreen screen;
    private Later<String, String> later;

    @BeforeEach
    void open() {
        screen = MemoryScreen.show(Pane::new);
        screen.run(() -> later = Later.of(value, this::loud, waiting::add));
    }

    private String loud(String quiet) {
        worked.add(quiet);
        return quiet + "!";
    }

    private void work() {
        waiting.remove().run();
        screen.run(() -> {});
    }

    private Optional<String> result() {
        return screen.get(() -> later.result().getValue());
    }

    @Test
    void showsWhatComesOfAValueOnceItIsThere() {
        screen.run(() -> value.set(Optional.of("a")));
        assertThat(result()).isEmpty();
        assertThat(later.workingProperty().get()).isTrue();

        work();
        assertThat(result()).contains("a!");
        assertThat(later.workingProperty().get()).isFalse();
    }

    @Test
    void theNewestValueWinsAndOlderOnesAreNotWorkedOut() {
        screen.run(() -> value.set(Optional.of("a")));
        screen.run(() -> value.set(Optional.of("b")));
        work();
        assertThat(result()).isEmpty();
        work();

        assertThat(result()).contains("b!");
        assertThat(worked).containsExactly("b");
    }

    @Test
    void whatWasThereStaysUntilSomethingNewerIs() {
        screen.run(() -> value.set(Optional.of("a")));
        work();
        screen.run(() -> value.set(Optional.of("b")));

        assertThat(result()).contains("a!");
        screen.run(() -> value.set(Optional.empty()));
        assertThat(result()).isEmpty();
    }
}
