package org.standwright.viewer.app;

import javafx.animation.PauseTransition;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.util.Duration;
import org.standwright.viewer.work.Stage;

/** Says what is being done once it takes long enough to wonder: most work is over before, and would only flicker. */
final class Slowly {
    private static final Duration PATIENCE = Duration.millis(300);

    private final PauseTransition patience = new PauseTransition(PATIENCE);

    Slowly(ObservableValue<Stage> stage, Label label) {
        patience.setOnFinished(waited -> label.setText(stage.getValue().words()));
        stage.subscribe(now -> {
            if (now.words().isEmpty()) {
                patience.stop();
                label.setText("");
            } else if (label.getText().isEmpty()) {
                patience.play();
            } else {
                label.setText(now.words());
            }
        });
    }
}
