package org.standwright.viewer.form;

import java.util.Optional;
import javafx.scene.control.Control;
import javafx.scene.layout.Region;
import org.standwright.file.form.Choice;
import org.standwright.file.form.Row;

/** One of a few values. */
final class ChoiceEditor implements Editor {
    private final Chooser chooser;
    private Row row;

    ChoiceEditor(FormModel model) {
        chooser = new Chooser(json -> model.choose(row, json), () -> model.clear(row));
    }

    @Override
    public Region node() {
        return chooser.box();
    }

    @Override
    public Control control() {
        return chooser.box();
    }

    @Override
    public void show(Row now) {
        row = now;
        chooser.show(value(now), standard(now), !now.isRequired() && !now.isChooser(), now::choices);
    }

    private static Optional<Choice> value(Row row) {
        return row.json()
                .map(json -> row.choices().stream()
                        .filter(choice -> choice.json().equals(json))
                        .findFirst()
                        .orElseGet(() -> new Choice(row.written().orElseThrow(), json)));
    }

    private static String standard(Row row) {
        return row.standard()
                .map(words -> row.choices().stream()
                        .filter(choice -> choice.json().equals(row.jsonOf(words))
                                || choice.json().equals(words))
                        .map(Choice::label)
                        .findFirst()
                        .orElse(words))
                .orElse("");
    }
}
