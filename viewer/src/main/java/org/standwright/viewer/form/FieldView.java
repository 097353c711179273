package org.standwright.viewer.form;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.file.form.Row;

/** A row of one value: its label, its control, what is wrong with it. */
final class FieldView extends RowView {
    static final PseudoClass STANDARD = PseudoClass.getPseudoClass("standard");
    private static final PseudoClass ERROR = PseudoClass.getPseudoClass("danger");

    private final Label label = new Label();
    private final Editor editor;
    private final FieldLine line;
    private final Button clear;
    private final ProblemLine problem = new ProblemLine();

    FieldView(Row row, Scope scope) {
        super(row, scope);
        editor = Editor.of(row, scope.model());
        line = new FieldLine(label, editor.node());
        clear = Icons.button(Feather.X, "Leave out", () -> scope.model().clear(row()));
        clear.setFocusTraversable(false); // an empty text, the first choice and the Delete key do the same
        Icons.showNear(clear, this, editor.control());
        label.getStyleClass().add("form-label");
        label.setWrapText(true);
        label.setLabelFor(editor.control());
        Hints.on(label, () -> row().description());
        line.addTrailing(clear);
        getStyleClass().add("form-field");
        getChildren().addAll(line, problem);
        refresh();
    }

    @Override
    void refresh() {
        var row = row();
        label.setText(row.label());
        editor.show(row);
        editor.control().setAccessibleText(row.label());
        editor.control().setAccessibleHelp(row.description());
        clear.setVisible(row.isGiven()
                && !row.isRequired()
                && !row.isChooser()
                && !row.isEntry()
                && Editor.kind(row) != Editor.Kind.FIXED);
        var problems = scope().model().problems(row);
        problem.show(
                row.isKnown()
                        ? problems
                        : problems.isEmpty() ? List.of("Not a field that this program knows.") : problems);
        editor.control().pseudoClassStateChanged(ERROR, !problems.isEmpty());
    }

    @Override
    void addTrailing(Node... controls) {
        line.addTrailing(controls);
    }

    @Override
    RowView reveal(String path) {
        return this;
    }

    @Override
    void focus() {
        editor.control().requestFocus();
    }
}
