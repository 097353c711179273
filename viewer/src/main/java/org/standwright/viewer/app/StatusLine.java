package org.standwright.viewer.app;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.standwright.viewer.work.Desk;

/** The line below everything: the main sizes, what is being worked out, and whether it is saved. */
final class StatusLine extends HBox {
    StatusLine(Desk desk) {
        getStyleClass().add("status-line");
        var sizes = new Label();
        sizes.textProperty()
                .bind(desk.builtProperty()
                        .map(built -> built.map(shown -> shown.furniture().accept(new Sizes()))
                                .orElse("")));
        var space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        var working = new ProgressIndicator();
        working.getStyleClass().add("working");
        var stage = new Label();
        new Slowly(desk.stageProperty(), stage);
        working.visibleProperty().bind(Bindings.isNotEmpty(stage.textProperty()));
        var saved = new Label();
        List.of(stage, saved).forEach(label -> label.setMinWidth(USE_PREF_SIZE));
        saved.textProperty().bind(desk.changedProperty().map(changed -> changed ? "● not saved" : "saved"));
        getChildren().setAll(sizes, space, working, stage, saved);
    }
}
