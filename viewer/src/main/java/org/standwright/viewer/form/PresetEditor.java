package org.standwright.viewer.form;

import javafx.scene.control.Control;
import javafx.scene.layout.Region;
import org.standwright.file.form.Choice;
import org.standwright.file.form.Row;

/** The name of a preset. */
final class PresetEditor implements Editor {
    private final Chooser chooser;
    private Row row;

    PresetEditor(FormModel model) {
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
        var value = now.written().map(name -> new Choice(name, now.json().orElseThrow()));
        chooser.show(
                value,
                standard(now),
                canBeLeftOut(now),
                () -> now.presetNames().stream()
                        .map(name -> new Choice(name, now.jsonOf(name)))
                        .toList());
    }

    private static String standard(Row row) {
        return row.standard().orElseGet(() -> row.parent().filter(Row::isGiven).isPresent() ? "Written here" : "");
    }

    /** A name alone is left out with the row that it stands for. */
    private static boolean canBeLeftOut(Row row) {
        var around = row.parent().filter(group -> group.pointer().equals(row.pointer()));
        return around.map(group -> group.isGiven() && !group.isRequired() && !group.isEntry())
                .orElse(false);
    }
}
