package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The one window of the viewer, on the screen or as a picture. */
final class Window {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 860;
    private static final int FINE = 0;
    private static final int NO_PICTURE = 1;

    private final DesignModel model = new DesignModel();
    private final Scene scene = new Scene(new DesignPane(model), WIDTH, HEIGHT);
    private final Stage stage = new Stage();

    /** @param design a design file; empty for the demo */
    Window(Optional<Path> design) {
        stage.titleProperty()
                .bind(model.designProperty()
                        .map(shown -> shown.map(opened -> opened.name() + " - Standwright")
                                .orElse("Standwright")));
        stage.setScene(scene);
        new Opener(model).open(design);
    }

    /** @param whenClosed gets the exit code */
    void show(IntConsumer whenClosed) {
        stage.setOnHidden(event -> whenClosed.accept(FINE));
        stage.show();
    }

    void close() {
        stage.close();
    }

    /**
     * Writes the window as it looks with the furniture in it; it need not be on the screen.
     *
     * @param whenDone gets the exit code
     */
    void picture(Path file, IntConsumer whenDone) {
        // later: when the pane, which listens too, has built its nodes
        model.designProperty().subscribe(() -> Platform.runLater(() -> whenDone.accept(write(file))));
        model.problemProperty()
                .subscribe(() -> whenDone.accept(refuse(model.problemProperty().get())));
    }

    private int write(Path file) {
        if (!DesignPane.canShow3d()) {
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
