package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The one window of the viewer, on the screen or as a picture. */
final class Window {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 860;
    private static final int FINE = 0;
    private static final int NO_PICTURE = 1;

    private final StandModel model = new StandModel();
    private final Opener opener = new Opener(model);
    private final Scene scene = new Scene(new StandPane(model), WIDTH, HEIGHT);

    void open(Optional<Path> design) {
        opener.open(design);
    }

    /** @param whenClosed gets the exit code */
    void show(IntConsumer whenClosed) {
        var stage = new Stage();
        stage.titleProperty()
                .bind(model.standProperty().map(stand -> stand.map(opened -> opened.name() + " - Standwright")
                        .orElse("Standwright")));
        stage.setScene(scene);
        stage.setOnHidden(event -> whenClosed.accept(FINE));
        stage.show();
    }

    /**
     * Writes the window as it looks with the stand in it, without showing it.
     *
     * @param whenDone gets the exit code
     */
    void picture(Path file, IntConsumer whenDone) {
        model.standProperty().addListener(change -> whenDone.accept(write(file)));
        model.problemProperty().addListener(change -> whenDone.accept(refuse(model.problemProperty().get())));
    }

    private int write(Path file) {
        if (!StandPane.canShow3d()) {
            return refuse("This screen's graphics driver cannot draw in 3D; start with -Dprism.forceGPU=true.");
        }
        try {
            Picture.write(scene.snapshot(null), file);
            return FINE;
        } catch (IOException e) {
            return refuse("'" + file + "' cannot be written: " + e.getMessage() + ". Choose another folder.");
        }
    }

    private static int refuse(String reason) {
        System.err.println(reason);
        return NO_PICTURE;
    }
}
