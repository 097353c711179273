package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.Image;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.standwright.viewer.document.Remembered;
import org.standwright.viewer.paper.PagesPane;
import org.standwright.viewer.paper.Printer;
import org.standwright.viewer.text.TextPane;
import org.standwright.viewer.work.Desk;

/** The one window of the viewer, on the screen or as a picture. */
final class Window {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final int FINE = 0;
    private static final int NO_PICTURE = 1;
    private static final String FORM = "Form";
    private static final String TEXT = "Text";

    private final Stage stage = new Stage();
    private final Appearance appearance = new Appearance();
    private final Executor worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "writes files");
        thread.setDaemon(true);
        return thread;
    });
    private final Dialogs dialogs;
    private final Desk desk;
    private final Keeper keeper;
    private final Pictures pictures;
    private final FileWork files;
    private final Remembered<WindowState> memory;
    private final Shell shell;
    private final Scene scene;
    private final Once<TextPane> text;
    private final Boxes boxes;
    private final List<Action> actions;

    Window(Setup setup) {
        dialogs = setup.dialogs().apply(stage);
        desk = new Desk(setup.threads(), setup.presets(), setup.first(), fault -> fault(fault));
        keeper = new Keeper(desk, setup.state(), setup.disk());
        files = new FileWork(desk, dialogs, setup.state(), this::finish);
        memory = new Remembered<>(setup.state().resolve("window.json"), WindowState.class);
        pictures = new Pictures(desk, dialogs, worker);
        var panes = new Panes(desk, dialogs, new Printer(), pictures);
        shell = new Shell(desk, panes.findings());
        text = new Once<>(() -> new TextPane(desk));
        shell.addEditor(FORM, new Once<>(() -> new FormEditor(desk)));
        shell.addEditor(TEXT, text);
        panes.addTo(shell.views());
        boxes = new Boxes(stage, appearance, desk, dialogs, worker);
        actions = new Commands(desk, files, this).all();
        shell.setActions(actions, Menus.recent(files));
        scene = new Scene(shell, WIDTH, HEIGHT);
        appearance.dress(shell);
        takeDroppedFiles();
        stage.titleProperty().bind(title());
        stage.setScene(scene);
        stage.setOnCloseRequest(closing -> {
            if (files.mayLeave()) {
                remember();
            } else {
                closing.consume();
            }
        });
        memory.recall().ifPresent(this::restore);
    }

    private ObservableValue<String> title() {
        return Bindings.createStringBinding(
                () -> (desk.changedProperty().get() ? "● " : "")
                        + desk.fileProperty()
                                .get()
                                .map(file -> file.getFileName() + " - ")
                                .orElse("")
                        + desk.builtProperty()
                                .get()
                                .map(built -> built.furniture().design().name() + " - ")
                                .orElse("")
                        + "Standwright",
                desk.changedProperty(),
                desk.fileProperty(),
                desk.builtProperty());
    }

    /** Makes what is being typed an edit. */
    private void finish() {
        text.made().ifPresent(TextPane::flush);
        var typing = scene.getFocusOwner();
        if (typing instanceof TextInputControl) {
            shell.requestFocus(); // a field that is left writes what was typed
            typing.requestFocus();
        }
    }

    void undo() {
        text.made().ifPresent(TextPane::flush);
        desk.undo();
    }

    Desk desk() {
        return desk;
    }

    Scene scene() {
        return scene;
    }

    /** The window's content without its frame. */
    Image picture() {
        return scene.snapshot(null);
    }

    void resize(double width, double height) {
        stage.setWidth(width + stage.getWidth() - scene.getWidth());
        stage.setHeight(height + stage.getHeight() - scene.getHeight());
    }

    Views views() {
        return shell.views();
    }

    Appearance appearance() {
        return appearance;
    }

    void begin() {
        boxes.begin(files);
    }

    void writeFiles() {
        boxes.writeFiles();
    }

    /** The packet as it is now; its pane says what the printer says. */
    void print() {
        shell.views().show(Panes.PACKET);
        if (shell.views().shown() instanceof PagesPane pages) {
            pages.printAll();
        }
    }

    void turnEditor() {
        shell.turnEditor();
    }

    void showKeys() {
        boxes.keys(actions, PaneKeys.all());
    }

    void savePicture() {
        pictures.save(picture());
    }

    private void takeDroppedFiles() {
        scene.addEventHandler(DragEvent.DRAG_OVER, over -> {
            if (over.getDragboard().hasFiles()) {
                over.acceptTransferModes(TransferMode.COPY);
            }
        });
        scene.addEventHandler(DragEvent.DRAG_DROPPED, dropped -> {
            var dragged = dropped.getDragboard().getFiles();
            dropped.setDropCompleted(!dragged.isEmpty());
            dragged.stream().findFirst().ifPresent(file -> Platform.runLater(() -> files.open(file.toPath())));
        });
    }

    void fault(Throwable fault) {
        new Crash(keeper, dialogs).happened(fault);
    }

    private void restore(WindowState state) {
        stage.setWidth(state.width());
        stage.setHeight(state.height());
        if (!Screen.getScreensForRectangle(state.x(), state.y(), state.width(), 1)
                .isEmpty()) {
            stage.setX(state.x());
            stage.setY(state.y());
        }
        stage.setMaximized(state.isMaximized());
        Look.named(state.look()).ifPresent(appearance.lookProperty()::set);
        appearance.percentProperty().set(state.percent());
    }

    private void remember() {
        keeper.forget();
        try {
            memory.keep(new WindowState(
                    stage.getX(),
                    stage.getY(),
                    stage.getWidth(),
                    stage.getHeight(),
                    stage.isMaximized(),
                    appearance.lookProperty().get().word(),
                    appearance.percentProperty().get()));
        } catch (IOException failure) {
            System.err.println("How the window was left could not be kept: " + failure);
        }
    }

    /** @param whenClosed gets the exit code */
    void show(IntConsumer whenClosed) {
        Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> fault(fault));
        stage.setOnHidden(event -> whenClosed.accept(FINE));
        stage.show();
    }

    /** As if its maker had asked for it. */
    void requestClose() {
        stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
    }

    void close() {
        stage.close();
    }

    /**
     * Writes the window as it looks when everything is worked out; it need not be on the screen.
     *
     * @param whenDone gets the exit code
     */
    void picture(Path file, IntConsumer whenDone) {
        desk.stageProperty().subscribe(now -> {
            switch (now) {
                // later: when the panes, which listen too, have built their nodes
                case DONE -> Platform.runLater(() -> whenDone.accept(write(file)));
                case REFUSED ->
                    whenDone.accept(refuse(desk.problemsProperty().get().get(0).message()));
                default -> {}
            }
        });
    }

    private int write(Path file) {
        try {
            Picture.write(picture(), file);
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
