package org.standwright.viewer.finding;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Formula, numbers and source of a finding; laid out when it is asked for, as most are not. */
final class WhyGrid extends GridPane {
    private final List<Why.Line> lines;

    WhyGrid(List<Why.Line> lines) {
        this.lines = lines;
        getStyleClass().add("why");
        var words = new ColumnConstraints();
        words.setMinWidth(USE_PREF_SIZE);
        var texts = new ColumnConstraints();
        texts.setHgrow(Priority.ALWAYS);
        getColumnConstraints().setAll(words, texts);
    }

    void fill() {
        if (!getChildren().isEmpty()) {
            return;
        }
        for (var line : lines) {
            var word = new Label(line.word());
            word.getStyleClass().add("word");
            word.setMinWidth(USE_PREF_SIZE);
            GridPane.setValignment(word, VPos.TOP);
            addRow(getRowCount(), word, FindingCard.wrapped(line.text(), "meaning"));
        }
    }
}
