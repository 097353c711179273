package org.standwright.viewer.form;

import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.file.form.Row;

/** An entry of a list, with what moves it, copies it and takes it away. Control with up or down moves it, too. */
final class EntryView extends VBox {
    private final FormModel model;
    private final RowView view;
    private final Button remove;
    private final Button menu;
    private Row row;

    EntryView(Row row, Scope scope) {
        this.row = row;
        model = scope.model();
        view = RowView.of(row, scope);
        remove = Icons.button(Feather.TRASH_2, "", () -> model.clear(row()));
        menu = Icons.button(Feather.MORE_HORIZONTAL, "", this::showMenu);
        view.addTrailing(menu, remove);
        getStyleClass().add("form-entry");
        getChildren().add(view);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        refresh();
    }

    Row row() {
        return row;
    }

    boolean suits(Row now) {
        return view.suits(now);
    }

    void update(Row now) {
        row = now;
        view.update(now);
        refresh();
    }

    RowView reveal(String path) {
        return view.reveal(path);
    }

    private void refresh() {
        Icons.name(remove, "Remove " + row().label());
        Icons.name(menu, "Move or copy " + row().label());
        remove.setDisable(!FormModel.canSpare(row()));
    }

    /** Made when it is asked for: a long list has many entries. */
    private void showMenu() {
        var duplicate = item("Duplicate", () -> model.duplicate(row));
        duplicate.setDisable(!FormModel.hasRoom(row.parent().orElseThrow()));
        var up = item("Move up", () -> model.move(row, -1));
        var down = item("Move down", () -> model.move(row, 1));
        new ContextMenu(duplicate, up, down).show(menu, Side.BOTTOM, 0, 0);
    }

    private void key(KeyEvent event) {
        boolean up = event.getCode() == KeyCode.UP;
        if (event.isControlDown() && (up || event.getCode() == KeyCode.DOWN) && isNearest(event)) {
            model.move(row(), up ? -1 : 1);
            event.consume();
        }
    }

    /** Whether this is the innermost entry around what has the focus. */
    private boolean isNearest(KeyEvent event) {
        var node = (Node) event.getTarget();
        while (node != this && !(node instanceof EntryView)) {
            node = node.getParent();
        }
        return node == this;
    }

    private static MenuItem item(String words, Runnable action) {
        var item = new MenuItem(words);
        item.setOnAction(event -> action.run());
        return item;
    }
}
