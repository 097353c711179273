package org.standwright.viewer.form;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.standwright.file.form.Input;
import org.standwright.file.form.Row;

/** The control in which one value is typed or chosen. */
interface Editor {
    /** What is laid out. */
    Region node();

    /** What gets the focus. */
    Control control();

    /** Shows the row's value, but leaves what is being typed. */
    void show(Row row);

    /** Which of the editors a row needs. */
    enum Kind {
        FIXED,
        TYPED,
        COUNTED,
        NOTE,
        CHOSEN,
        TICKED,
        NONE
    }

    static Kind kind(Row row) {
        if (RowView.isSection(row)
                && (row.name().equals("version") || row.name().equals("kind"))) {
            return Kind.FIXED;
        }
        return switch (row.input()) {
            case GROUP, LIST, PRESET -> Kind.NONE;
            case CHOICE, PRESET_NAME -> Kind.CHOSEN;
            case TRUTH -> Kind.TICKED;
            case WHOLE -> Kind.COUNTED;
            default -> row.name().equals("note") ? Kind.NOTE : Kind.TYPED;
        };
    }

    static Editor of(Row row, FormModel model) {
        return switch (kind(row)) {
            case FIXED, NONE -> new Fixed();
            case CHOSEN -> row.input() == Input.CHOICE ? new ChoiceEditor(model) : new PresetEditor(model);
            case TICKED -> new TruthEditor(model);
            case NOTE -> new NoteEditor(model);
            case COUNTED -> new CountEditor(model);
            case TYPED -> new TypedEditor(model);
        };
    }

    /** What is shown and never changed. */
    final class Fixed implements Editor {
        private final Label label = new Label();

        @Override
        public Region node() {
            return label;
        }

        @Override
        public Control control() {
            return label;
        }

        @Override
        public void show(Row row) {
            label.setText(row.written().orElse(""));
        }
    }
}
