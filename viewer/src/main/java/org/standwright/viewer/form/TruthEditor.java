package org.standwright.viewer.form;

import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.standwright.file.form.Row;

/** Yes or no; the Delete key leaves it out again. */
final class TruthEditor implements Editor {
    private final CheckBox box = new CheckBox();
    private Row row;

    TruthEditor(FormModel model) {
        box.setOnAction(event -> model.choose(row, String.valueOf(box.isSelected())));
        box.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.DELETE && !row.isRequired()) {
                model.clear(row);
            }
        });
    }

    @Override
    public Region node() {
        return box;
    }

    @Override
    public Control control() {
        return box;
    }

    @Override
    public void show(Row now) {
        row = now;
        boolean isTrue = now.written().or(now::standard).filter("true"::equals).isPresent();
        box.setSelected(isTrue);
        var words = isTrue ? "Yes" : "No";
        box.setText(now.isGiven() ? words : words + ", as usual");
        box.pseudoClassStateChanged(FieldView.STANDARD, !now.isGiven());
    }
}
