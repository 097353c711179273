package org.standwright.viewer.app;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.standwright.viewer.preset.BeginPane;
import org.standwright.viewer.preset.Beginning;
import org.standwright.viewer.work.Desk;

/** The windows that the window opens: what to begin with, which files to write, the keys. Esc closes them. */
final class Boxes {
    private static final int WIDTH = 860;
    private static final int HEIGHT = 640;

    private final Stage owner;
    private final Appearance appearance;
    private final Desk desk;
    private final Dialogs dialogs;
    private final Executor worker;

    Boxes(Stage owner, Appearance appearance, Desk desk, Dialogs dialogs, Executor worker) {
        this.owner = owner;
        this.appearance = appearance;
        this.desk = desk;
        this.dialogs = dialogs;
        this.worker = worker;
    }

    /** @param files lays what was chosen on the desk */
    void begin(FileWork files) {
        var box = new Stage();
        var beginning = new Beginning(desk.presets());
        var pane = new BeginPane(beginning, desk.shownUnits().getValue(), worker, opened -> {
            box.close();
            files.start(opened);
        });
        show(box, "Begin with", pane);
    }

    void writeFiles() {
        var box = new Stage();
        box.initModality(Modality.WINDOW_MODAL);
        var pane = new ExportBox(desk, dialogs, worker);
        box.setOnHidden(closed -> pane.cancel());
        show(box, "Write files", pane);
    }

    void keys(List<Action> actions, Map<String, String> inPanes) {
        show(new Stage(), "Keys", new KeySheet(actions, inPanes));
    }

    private void show(Stage box, String title, Parent pane) {
        box.initOwner(owner);
        box.setTitle(title);
        pane.getStylesheets().add(Boxes.class.getResource("viewer.css").toExternalForm());
        pane.getStyleClass().add("box");
        appearance.size(pane);
        var scene = new Scene(pane, WIDTH, HEIGHT);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
            if (pressed.getCode() == KeyCode.ESCAPE) {
                box.close();
            }
        });
        box.setScene(scene);
        box.show();
    }
}
