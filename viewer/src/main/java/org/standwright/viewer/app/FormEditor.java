package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.layout.BorderPane;
import org.standwright.file.form.Presets;
import org.standwright.viewer.form.FormModel;
import org.standwright.viewer.form.FormPane;
import org.standwright.viewer.work.Desk;

/** The form of the text on the desk; it knows the presets of the folder that the file lies in. */
final class FormEditor extends BorderPane {
    private final Desk desk;
    private FormModel model;

    FormEditor(Desk desk) {
        this.desk = desk;
        begin(desk.fileProperty().get());
        desk.fileProperty().addListener((property, before, file) -> begin(file));
        desk.settledProperty().addListener((property, before, now) -> show());
    }

    private void begin(Optional<Path> file) {
        model = new FormModel(new Presets(desk.presets()), new DeskEdits(desk));
        setCenter(new FormPane(model));
        show();
    }

    private void show() {
        var settled = desk.settledProperty().get();
        model.show(settled.document().text(), settled.problems());
    }
}
