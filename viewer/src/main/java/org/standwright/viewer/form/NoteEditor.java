package org.standwright.viewer.form;

import javafx.scene.control.Control;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.standwright.file.form.Row;

/** A note of a few lines; Tab leaves it as it leaves other fields. */
final class NoteEditor implements Editor {
    private final TextArea area = new Area();
    private final Typing typing;

    NoteEditor(FormModel model) {
        typing = new Typing(area, model);
        area.setWrapText(true);
        area.getStyleClass().add("form-note");
        area.textProperty().subscribe(text -> area.requestLayout());
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::tab);
    }

    @Override
    public Region node() {
        return area;
    }

    @Override
    public Control control() {
        return area;
    }

    @Override
    public void show(Row row) {
        typing.show(row);
    }

    private void tab(KeyEvent event) {
        if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
            // a text area keeps plain Tab for itself, and leaves on Control+Tab
            area.fireEvent(
                    new KeyEvent(event.getEventType(), "", "", KeyCode.TAB, event.isShiftDown(), true, false, false));
            event.consume();
        }
    }

    /** As high as its text is at its width, up to a few lines; then it scrolls. */
    private static final class Area extends TextArea {
        private static final int MOST_LINES = 6;
        /** Room around the text, em. */
        private static final double BESIDE = 2.4;

        private static final double ABOVE = 1.3;

        private final Text measure = new Text();

        @Override
        protected double computePrefHeight(double width) {
            double em = getFont().getSize();
            measure.setFont(getFont());
            measure.setWrappingWidth(Math.max(em, width - BESIDE * em));
            measure.setText("x");
            double line = measure.getLayoutBounds().getHeight();
            measure.setText(getText().isEmpty() ? "x" : getText());
            return Math.min(MOST_LINES * line, measure.getLayoutBounds().getHeight()) + ABOVE * em;
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }
    }
}
