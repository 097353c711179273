package org.standwright.viewer.scene.tools;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.property.BooleanProperty;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Keys of the tools, besides those of the view itself. */
final class ToolKeys {
    private final Map<KeyCombination, Runnable> keys = new HashMap<>();

    ToolKeys on(KeyCode code, Runnable work) {
        keys.put(new KeyCodeCombination(code), work);
        return this;
    }

    ToolKeys onShift(KeyCode code, Runnable work) {
        keys.put(new KeyCodeCombination(code, KeyCombination.SHIFT_DOWN), work);
        return this;
    }

    ToolKeys swaps(KeyCode code, BooleanProperty property) {
        return on(code, () -> property.set(!property.get()));
    }

    void press(KeyEvent event) {
        keys.entrySet().stream()
                .filter(entry -> entry.getKey().match(event))
                .findFirst()
                .ifPresent(entry -> {
                    entry.getValue().run();
                    event.consume();
                });
    }
}
