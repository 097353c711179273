package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import javafx.concurrent.Service;
import javafx.concurrent.Task;
import org.standwright.file.text.DesignFileException;
import org.standwright.solid.SolidException;

/** Opens designs away from the screen's thread and hands them to the model; the newest request wins. */
final class Opener extends Service<OpenedStand> {
    private final StandModel model;
    private Optional<Path> file = Optional.empty();

    Opener(StandModel model) {
        this.model = model;
    }

    /** @param wanted a design file; empty for the demo */
    void open(Optional<Path> wanted) {
        file = wanted;
        restart();
    }

    @Override
    protected Task<OpenedStand> createTask() {
        var wanted = file;
        var before = model.standProperty().get();
        return new Task<>() {
            @Override
            protected OpenedStand call() {
                return before.map(stand -> stand.next(wanted)).orElseGet(() -> OpenedStand.open(wanted));
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
