package org.standwright.viewer.form;

import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import org.standwright.file.form.Input;
import org.standwright.file.form.Row;

/** A value that is typed; the up and down keys step numbers, and write them when they are let go. */
final class TypedEditor implements Editor {
    private static final int BIG_STEP = 10;

    private final TextField field = new TextField();
    private final Typing typing;

    TypedEditor(FormModel model) {
        typing = new Typing(field, model);
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        field.addEventFilter(KeyEvent.KEY_RELEASED, this::release);
    }

    @Override
    public Region node() {
        return field;
    }

    @Override
    public Control control() {
        return field;
    }

    @Override
    public void show(Row row) {
        typing.show(row);
    }

    /** Steps what stands there, or would if nothing does. */
    void step(int steps) {
        var row = typing.row();
        var from = field.getText().isBlank() ? row.standard().orElse("") : field.getText();
        Stepper.step(row, from, steps).ifPresent(text -> {
            field.setText(text);
            field.end();
        });
    }

    void commit() {
        typing.commit();
    }

    private void press(KeyEvent event) {
        if (isStep(event)) {
            int steps = event.isShiftDown() ? BIG_STEP : 1;
            step(event.getCode() == KeyCode.UP ? steps : -steps);
            event.consume();
        }
    }

    private void release(KeyEvent event) {
        if (isStep(event)) {
            commit();
        }
    }

    private boolean isStep(KeyEvent event) {
        var input = typing.row().input();
        boolean isNumber = input.isQuantity() || input == Input.WHOLE || input == Input.NUMBER;
        return isNumber
                && !event.isShortcutDown()
                && !event.isControlDown()
                && (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN);
    }
}
