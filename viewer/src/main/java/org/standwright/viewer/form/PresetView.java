package org.standwright.viewer.form;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.file.form.Row;

/** A preset's name on one line; the fields that replace its own are folded behind it. */
final class PresetView extends FoldView {
    private final PresetEditor editor;
    private final FieldLine line;
    private final MenuButton menu = new MenuButton();
    private final ProblemLine problem = new ProblemLine();
    private Optional<RowsBox> box = Optional.empty();

    PresetView(Row row, Scope scope) {
        super(row, scope);
        editor = new PresetEditor(scope.model());
        line = new FieldLine(head(), editor.node());
        line.addTrailing(Icons.dress(menu, Feather.MORE_HORIZONTAL, "More for this preset"));
        menu.setOnShowing(event -> fill());
        fill();
        getStyleClass().add("form-preset");
        getChildren().set(0, line);
        getChildren().add(1, problem);
        start();
    }

    @Override
    void refresh() {
        super.refresh();
        name().ifPresent(editor::show);
        editor.control().setAccessibleText(row().label());
        problem.show(
                isOpen() ? List.of() : name().map(scope().model()::problems).orElse(List.of()));
    }

    private Optional<Row> name() {
        return row().row("preset");
    }

    private void fill() {
        var writeOut = new MenuItem("Write out its fields");
        writeOut.setOnAction(event -> scope().model().writeOut(row()));
        writeOut.setDisable(row().writeOut().isEmpty());
        var remove = new MenuItem("Leave out");
        remove.setOnAction(event -> scope().model().clear(row()));
        remove.setDisable(!row().isGiven() || row().isRequired() || row().isEntry());
        menu.getItems().setAll(writeOut, remove);
    }

    @Override
    void addTrailing(Node... controls) {
        line.addTrailing(controls);
    }

    @Override
    Region body() {
        return rows();
    }

    @Override
    void refreshBody() {
        rows().update(row().rows().stream()
                .filter(inside -> !inside.name().equals("preset"))
                .toList());
    }

    @Override
    RowView revealInside(String path) {
        return rows().reveal(path).orElse(this);
    }

    @Override
    void focus() {
        editor.control().requestFocus();
    }

    private RowsBox rows() {
        if (box.isEmpty()) {
            box = Optional.of(new RowsBox(scope(), row().path(), "more of its own fields"));
        }
        return box.get();
    }
}
