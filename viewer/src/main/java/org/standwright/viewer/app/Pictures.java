package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.image.Image;
import org.standwright.viewer.work.Desk;

/** Saves pictures of the window and of its panes where their maker wants them. */
final class Pictures {
    private final Desk desk;
    private final Dialogs dialogs;
    private final Executor worker;

    /** @param worker writes files */
    Pictures(Desk desk, Dialogs dialogs, Executor worker) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.worker = worker;
    }

    /** The picture must not change any more. */
    void save(Image picture) {
        dialogs.fileToSave("Save a picture", FileName.plain(desk) + ".png", ".png")
                .ifPresent(file -> worker.execute(() -> write(picture, file)));
    }

    private void write(Image picture, Path file) {
        try {
            Picture.write(picture, file);
        } catch (IOException failure) {
            Platform.runLater(
                    () -> dialogs.tell("Not saved", "'" + file + "' cannot be written. Choose another folder."));
        }
    }
}
