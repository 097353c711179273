package org.standwright.viewer.form;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.file.form.Row;

/** A group that is left out, with a button that adds it. */
final class AddView extends RowView {
    private final Button add;
    private final FieldLine line;
    private final ProblemLine problem = new ProblemLine();

    AddView(Row row, Scope scope) {
        super(row, scope);
        var label = new Label(row.label());
        label.getStyleClass().add("form-label");
        label.setWrapText(true);
        Hints.on(label, () -> row().description());
        add = new Button("Add", new FontIcon(Feather.PLUS));
        add.getStyleClass().add("form-add");
        add.setAccessibleText("Add " + row.label());
        add.setAccessibleHelp(row.description());
        add.setOnAction(event -> {
            scope.folds().set(row().path(), true);
            scope.model().add(row());
        });
        line = new FieldLine(label, add);
        getStyleClass().add(isSection(row) ? "form-section" : "form-field");
        getChildren().addAll(line, problem);
        refresh();
    }

    @Override
    void refresh() {
        problem.show(scope().model().problems(row()));
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
        add.requestFocus();
    }
}
