package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import javafx.concurrent.Service;
import javafx.concurrent.Task;
import org.standwright.file.text.DesignFileException;
import org.standwright.solid.SolidException;

/** Opens designs away from the screen's thread and hands them to the model; the newest request wins. */
final class Opener extends Service<OpenedDesign> {
    private final DesignModel model;
    private Optional<Path> file = Optional.empty();

    Opener(DesignModel model) {
        this.model = model;
    }

    /** @param wanted a design file; empty for the demo */
    void open(Optional<Path> wanted) {
        file = wanted;
        restart();
    }

    @Override
    protected Task<OpenedDesign> createTask() {
        var wanted = file;
        var before = model.designProperty().get();
        return new Task<>() {
            @Override
            protected OpenedDesign call() {
                return before.map(opened -> opened.next(wanted)).orElseGet(() -> OpenedDesign.open(wanted));
            }
        };
    }

    @Override
    protected void succeeded() {
        model.show(getValue());
    }

    @Override
    protected void failed() {
        var failure = getException();
        if (failure instanceof DesignFileException || failure instanceof SolidException) {
            model.refuse(failure.getMessage());
        } else {
            model.refuse("The viewer itself failed: " + failure);
            failure.printStackTrace();
        }
    }
}
