package org.standwright.viewer.form;

import java.util.Objects;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.standwright.file.form.Row;

/** Typing in a text control: Enter and leaving it write the value, Escape and undo give the old one back. */
final class Typing {
    private final TextInputControl control;
    private final FormModel model;
    private Row row;
    private String shown = "";

    Typing(TextInputControl control, FormModel model) {
        this.control = control;
        this.model = model;
        control.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        control.focusedProperty().subscribe((was, is) -> {
            if (was && !is) {
                commit();
            }
        });
    }

    void show(Row now) {
        row = now;
        var text = now.written().orElse("");
        boolean isBeingTyped = control.isFocused() && !control.getText().equals(shown);
        shown = text;
        if (!isBeingTyped && !control.getText().equals(text)) {
            int caret = control.getCaretPosition();
            control.setText(text);
            control.positionCaret(Math.min(caret, text.length()));
        }
        var prompt = now.standard()
                .or(() -> now.example().map(example -> "such as " + example))
                .orElse("");
        if (!Objects.equals(control.getPromptText(), prompt)) {
            control.setPromptText(prompt);
        }
    }

    Row row() {
        return row;
    }

    void commit() {
        if (!control.getText().equals(shown)) {
            model.type(row, control.getText());
            if (control.getText().isBlank() && row.written().isEmpty()) {
                control.setText("");
            }
        }
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && !event.isShiftDown()) {
            commit();
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && !control.getText().equals(shown)) {
            control.setText(shown);
            control.selectAll();
            event.consume();
        } else if (event.isShortcutDown() && (event.getCode() == KeyCode.Z || event.getCode() == KeyCode.Y)) {
            undo(event);
            event.consume();
        }
    }

    /** What is being typed is taken back first; the control's own undo would bring back what is no longer written. */
    private void undo(KeyEvent event) {
        if (control.getText().equals(shown)) {
            control.getParent().fireEvent(event.copyFor(control, control.getParent()));
        } else {
            control.setText(shown);
        }
    }
}
