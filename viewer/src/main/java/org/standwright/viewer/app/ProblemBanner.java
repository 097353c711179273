package org.standwright.viewer.app;

import java.util.List;
import javafx.scene.control.Label;
import org.standwright.file.text.FileProblem;
import org.standwright.viewer.work.Desk;

/** Says that what is seen is not what is written, for as long as the text is wrong. */
final class ProblemBanner extends Label {
    ProblemBanner(Desk desk) {
        getStyleClass().add("problem-banner");
        setMaxWidth(Double.MAX_VALUE);
        setWrapText(true);
        managedProperty().bind(visibleProperty());
        desk.problemsProperty().subscribe(problems -> {
            setVisible(!problems.isEmpty());
            setText(words(problems, desk.builtProperty().get().isPresent()));
        });
    }

    private static String words(List<FileProblem> problems, boolean isSomethingShown) {
        if (problems.isEmpty()) {
            return "";
        }
        var more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
        var seen = isSomethingShown ? " You see the last design that could be built." : "";
        return "✖ " + problems.get(0).message() + more + seen;
    }
}
