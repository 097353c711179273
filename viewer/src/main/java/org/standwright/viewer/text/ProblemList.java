package org.standwright.viewer.text;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import org.standwright.file.text.FileProblem;

/** Everything that is wrong with a text; a click or Enter leads to the place. Takes no room while there is nothing. */
final class ProblemList extends VBox {
    private static final int MOST = 12;

    private final Consumer<FileProblem> goTo;

    ProblemList(Consumer<FileProblem> goTo) {
        this.goTo = goTo;
        getStyleClass().add("problems");
        managedProperty().bind(visibleProperty());
        setVisible(false);
    }

    void show(List<FileProblem> problems) {
        getChildren().setAll(problems.stream().limit(MOST).map(this::line).toList());
        setVisible(!problems.isEmpty());
    }

    private Node line(FileProblem problem) {
        var line = new Hyperlink("✖ " + problem.message());
        line.setWrapText(true);
        line.getStyleClass().add("problem");
        line.setOnAction(chosen -> goTo.accept(problem));
        return line;
    }
}
