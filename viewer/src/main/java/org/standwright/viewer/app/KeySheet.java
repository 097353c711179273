package org.standwright.viewer.app;

import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;

/** All keys on one sheet: those of the menus, and those of the panes. */
final class KeySheet extends ScrollPane {
    private final GridPane grid = new GridPane();

    /** @param inPanes what keys do in a pane: 'In 3D: F' and 'fit' */
    KeySheet(List<Action> actions, Map<String, String> inPanes) {
        grid.getStyleClass().add("key-sheet");
        actions.stream()
                .filter(action -> action.keys().isPresent())
                .forEach(action -> line(action.keys().orElseThrow().getDisplayText(), action.name()));
        inPanes.forEach(this::line);
        setContent(grid);
        setFitToWidth(true);
    }

    private void line(String keys, String does) {
        var pressed = new Label(keys);
        pressed.getStyleClass().add("keys");
        grid.addRow(grid.getRowCount(), pressed, wrapped(does));
    }

    private static Node wrapped(String words) {
        var label = new Label(words);
        label.setWrapText(true);
        return label;
    }
}
