package org.standwright.viewer.paper;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;

/** Says that something better is on its way, and takes no room otherwise. */
public final class Working {
    private Working() {}

    /** @param words 'Looking for a better plan …' */
    public static Node of(ObservableValue<Boolean> working, String words) {
        var label = new Label(words);
        label.getStyleClass().add("working");
        label.getStylesheets().add(Working.class.getResource("paper.css").toExternalForm());
        // only while it turns: a ring that turns unseen costs frames all the same
        working.subscribe(now -> label.setGraphic(now ? ring() : null));
        label.visibleProperty().bind(working);
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    private static Node ring() {
        var ring = new ProgressIndicator();
        ring.getStyleClass().add("ring");
        return ring;
    }
}
