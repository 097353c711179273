package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.TextArea;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** The boxes of the system that the window is on. */
final class SystemDialogs implements Dialogs {
    private final Window owner;
    private Optional<Alert> fault = Optional.empty();

    SystemDialogs(Window owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> fileToOpen() {
        var chooser = new FileChooser();
        chooser.setTitle("Open a design");
        chooser.getExtensionFilters()
                .setAll(new ExtensionFilter("Designs (*.json)", "*.json"), new ExtensionFilter("All files", "*"));
        return Optional.ofNullable(chooser.showOpenDialog(owner)).map(file -> file.toPath());
    }

    @Override
    public Optional<Path> fileToSave(String title, String name, String ending) {
        var chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialFileName(name);
        chooser.getExtensionFilters().setAll(new ExtensionFilter("*" + ending, "*" + ending));
        return Optional.ofNullable(chooser.showSaveDialog(owner))
                .map(file -> file.toPath())
                .map(file -> file.getFileName().toString().contains(".")
                        ? file
                        : file.resolveSibling(file.getFileName() + ending));
    }

    @Override
    public Optional<Path> folderToFill() {
        var chooser = new DirectoryChooser();
        chooser.setTitle("Choose an empty folder, or one that was filled here before");
        return Optional.ofNullable(chooser.showDialog(owner)).map(folder -> folder.toPath());
    }

    @Override
    public Optional<String> ask(String title, String question, List<String> answers) {
        var alert = alert(Alert.AlertType.CONFIRMATION, title, question);
        alert.getButtonTypes().clear();
        for (var answer : answers) {
            var data = answer.equals(answers.get(0)) ? ButtonData.OK_DONE : ButtonData.OTHER;
            alert.getButtonTypes().add(new ButtonType(answer, data));
        }
        alert.getButtonTypes().add(ButtonType.CANCEL);
        return alert.showAndWait()
                .filter(pressed -> pressed != ButtonType.CANCEL)
                .map(ButtonType::getText);
    }

    @Override
    public void tell(String title, String words) {
        alert(Alert.AlertType.INFORMATION, title, words).showAndWait();
    }

    @Override
    public void fault(String words, String details) {
        if (fault.filter(Alert::isShowing).isPresent()) {
            return; // one at a time: a fault that comes with every frame would fill the screen
        }
        var alert = alert(Alert.AlertType.ERROR, "Something went wrong", words);
        var text = new TextArea(details);
        text.setEditable(false);
        alert.getDialogPane().setExpandableContent(text);
        fault = Optional.of(alert);
        alert.show(); // does not wait: it may come from within a layout pass
    }

    private Alert alert(Alert.AlertType type, String title, String words) {
        var alert = new Alert(type, words);
        alert.initOwner(owner);
        alert.setTitle(title);
        alert.setHeaderText(title);
        alert.setResizable(true);
        return alert;
    }
}
