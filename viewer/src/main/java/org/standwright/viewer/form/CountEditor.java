package org.standwright.viewer.form;

import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.file.form.Row;

/** A number of things, typed or stepped by two buttons; from the keyboard by the up and down keys. */
final class CountEditor implements Editor {
    private final TypedEditor typed;
    private final HBox node;

    CountEditor(FormModel model) {
        typed = new TypedEditor(model);
        node = new HBox(typed.node(), button(Feather.MINUS, "One less", -1), button(Feather.PLUS, "One more", 1));
        node.getStyleClass().add("form-count");
        HBox.setHgrow(typed.node(), Priority.ALWAYS);
    }

    @Override
    public Region node() {
        return node;
    }

    @Override
    public Control control() {
        return typed.control();
    }

    @Override
    public void show(Row row) {
        typed.show(row);
    }

    private Button button(Feather icon, String words, int step) {
        var button = Icons.button(icon, words, () -> {
            typed.step(step);
            typed.commit();
        });
        button.setFocusTraversable(false);
        return button;
    }
}
