package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.standwright.viewer.document.DesignText;
import org.standwright.viewer.document.Recent;
import org.standwright.viewer.document.Remembered;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;

/** Opening and saving: nothing that was typed is left without a question. */
final class FileWork {
    private static final String SAVE = "Save";
    private static final String LEAVE = "Leave it";

    private final Desk desk;
    private final Dialogs dialogs;
    private final Runnable finish;
    private final Remembered<Recent> memory;
    private final ReadOnlyObjectWrapper<Recent> recent;

    /** @param finish makes what is being typed an edit */
    FileWork(Desk desk, Dialogs dialogs, Path stateFolder, Runnable finish) {
        this.desk = desk;
        this.finish = finish;
        this.dialogs = dialogs;
        this.memory = new Remembered<>(stateFolder.resolve("recent.json"), Recent.class);
        this.recent =
                new ReadOnlyObjectWrapper<>(this, "recent", memory.recall().orElse(Recent.none()));
    }

    ReadOnlyObjectProperty<Recent> recentProperty() {
        return recent.getReadOnlyProperty();
    }

    void open() {
        dialogs.fileToOpen().ifPresent(this::open);
    }

    /** Lays a file on the desk, wrong or not: what is wrong with it can be mended there. */
    void open(Path file) {
        if (!mayLeave()) {
            return;
        }
        try {
            desk.lay(Opened.fromFile(file, DesignText.read(file)));
            remember(recent.get().with(file));
        } catch (IOException failure) {
            remember(recent.get().without(file));
            dialogs.tell("Not opened", "'" + file + "' cannot be read: " + reason(failure));
        }
    }

    /** Lays a text on the desk that has no file yet. */
    void start(Opened fresh) {
        if (mayLeave()) {
            desk.lay(fresh);
        }
    }

    /** @return whether it is saved now */
    boolean save() {
        finish.run();
        return desk.fileProperty().get().map(this::saveTo).orElseGet(this::saveAs);
    }

    boolean saveAs() {
        finish.run();
        var name = desk.fileProperty()
                .get()
                .map(file -> file.getFileName().toString())
                .orElseGet(() -> FileName.of(desk));
        return dialogs.fileToSave("Save the design", name, ".json")
                .filter(this::saveTo)
                .isPresent();
    }

    private boolean saveTo(Path file) {
        try {
            DesignText.write(file, desk.historyProperty().get().present().text());
            desk.saved(file);
            remember(recent.get().with(file));
            return true;
        } catch (IOException failure) {
            dialogs.tell(
                    "Not saved",
                    "'" + file + "' cannot be written: " + reason(failure)
                            + " Your work is still here; save it under another name.");
            return false;
        }
    }

    /** Whether what is on the desk is saved, or not wanted. */
    boolean mayLeave() {
        finish.run();
        if (!desk.changedProperty().get()) {
            return true;
        }
        var answer = dialogs.ask(
                "Not saved yet", "Your changes to " + desk.name() + " are not saved.", List.of(SAVE, LEAVE));
        return answer.filter(LEAVE::equals).isPresent()
                || answer.filter(SAVE::equals).isPresent() && save();
    }

    private void remember(Recent now) {
        recent.set(now);
        try {
            memory.keep(now);
        } catch (IOException failure) {
            // the list is a convenience: it lives on until the window is closed
        }
    }

    private static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder.";
        }
        return failure instanceof AccessDeniedException ? "you may not." : failure.getMessage() + ".";
    }
}
