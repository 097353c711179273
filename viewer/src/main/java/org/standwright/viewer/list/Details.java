package org.standwright.viewer.list;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** All that is to say of a selected row, below its table; a hint where none is selected. */
final class Details extends ScrollPane {
    private final VBox lines = new VBox();
    private final String hint;
    private List<String> shown = List.of();

    Details(String hint) {
        this.hint = hint;
        getStyleClass().add("details");
        setFitToWidth(true);
        setAccessibleText("About the selected row");
        lines.getStyleClass().add("lines");
        setContent(lines);
        show(List.of());
    }

    void show(List<String> sentences) {
        var now = sentences.isEmpty() ? List.of(hint) : sentences;
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        lines.getChildren().setAll(shown.stream().map(Details::line).toList());
        setVvalue(0);
    }

    private static Label line(String words) {
        var label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
