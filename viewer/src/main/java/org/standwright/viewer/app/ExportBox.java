package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.concurrent.Worker;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Spinner;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.standwright.make.Format;
import org.standwright.make.OutputException;
import org.standwright.make.Product;
import org.standwright.sheet.plan.Effort;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Stage;

/** Which files to write, how long to look for a sheet plan, and how far it has come. */
final class ExportBox extends VBox {
    private static final Map<Format, String> WORDS = Map.ofEntries(
            Map.entry(Format.CSV, "tables (cut list, cuts, hardware)"),
            Map.entry(Format.TXT, "cut list to read"),
            Map.entry(Format.JSON, "report as data"),
            Map.entry(Format.PDF, "packet on paper"),
            Map.entry(Format.STL, "solids as STL"),
            Map.entry(Format.STL_TEXT, "solids as STL, written as text"),
            Map.entry(Format.STEP, "exact solids as STEP"),
            Map.entry(Format.OBJ, "solids as OBJ"),
            Map.entry(Format.THREE_MF, "solids as 3MF, for printers"),
            Map.entry(Format.GLB, "solids as GLB, to look at"),
            Map.entry(Format.SVG, "sheets and walls as SVG"),
            Map.entry(Format.DXF, "parts at true size as DXF"),
            Map.entry(Format.TEMPLATES, "templates at true size (PDF, SVG)"),
            Map.entry(Format.ROUTER, "boards for the design's router (DXF, SVG, legend)"));

    private final Desk desk;
    private final Dialogs dialogs;
    private final Executor worker;
    private final Map<Format, CheckBox> formats = new EnumMap<>(Format.class);
    private final Spinner<Integer> seconds = new Spinner<>(0, 3600, 0, 5);
    private final ProgressBar bar = new ProgressBar(0);
    private final Label said = new Label();
    private final Button write = new Button("Choose a folder and write …");
    private final Button cancel = new Button("Cancel");
    private Optional<Export> running = Optional.empty();

    ExportBox(Desk desk, Dialogs dialogs, Executor worker) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.worker = worker;
        getStyleClass().add("export-box");
        seconds.setEditable(true);
        seconds.setMinWidth(USE_PREF_SIZE);
        seconds.getValueFactory().setConverter(new WholeSeconds(seconds::getValue));
        seconds.setAccessibleText("Seconds to look for a better sheet plan");
        said.setWrapText(true);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setVisible(false);
        write.setDefaultButton(true);
        write.setOnAction(pressed -> dialogs.folderToFill().ifPresent(this::writeTo));
        cancel.setDisable(true);
        cancel.setOnAction(pressed -> cancel());
        var none = Bindings.createBooleanBinding(
                () -> desk.builtProperty().get().isEmpty()
                        || !desk.problemsProperty().get().isEmpty(),
                desk.builtProperty(),
                desk.problemsProperty());
        write.disableProperty().bind(none.or(cancel.disableProperty().not()));
        getChildren().setAll(heading("Files"), choices(), heading("Sheet plan"), patience(), buttons(), bar, said);
    }

    private static Node heading(String words) {
        var label = new Label(words);
        label.getStyleClass().add("title-4");
        return label;
    }

    private Node choices() {
        var boxes = new FlowPane();
        boxes.getStyleClass().add("choices");
        for (var format : Format.values()) {
            var box = new CheckBox(format.word().toUpperCase(Locale.ROOT) + ": " + WORDS.get(format));
            box.setSelected(Format.usual().contains(format));
            formats.put(format, box);
            boxes.getChildren().add(box);
        }
        return boxes;
    }

    private Node patience() {
        var words = new Label(
                "seconds for each material to look for a better plan; with 0 the usual plan, the same every time");
        words.setWrapText(true);
        HBox.setHgrow(words, Priority.ALWAYS);
        var line = new HBox(seconds, words);
        line.getStyleClass().add("line");
        return line;
    }

    private Node buttons() {
        var line = new HBox(write, cancel);
        line.getStyleClass().add("line");
        return line;
    }

    private EnumSet<Format> chosen() {
        var chosen = EnumSet.noneOf(Format.class);
        formats.forEach((format, box) -> {
            if (box.isSelected()) {
                chosen.add(format);
            }
        });
        return chosen;
    }

    void writeTo(Path folder) {
        if (chosen().isEmpty() || desk.builtProperty().get().isEmpty()) {
            said.setText("Choose at least one kind of file.");
            return;
        }
        var export = new Export(product(), chosen(), folder);
        running = Optional.of(export);
        said.textProperty().bind(export.messageProperty());
        bar.progressProperty().bind(export.progressProperty());
        bar.setVisible(true);
        cancel.setDisable(false);
        export.setOnSucceeded(done -> end(export.getValue().files() + " files are in " + folder + ". "
                + String.join(" ", export.getValue().notes())));
        export.setOnCancelled(done -> end("Cancelled. The folder is as it was, or whole."));
        export.setOnFailed(done -> end(reason(export.getException())));
        worker.execute(export);
    }

    void cancel() {
        running.filter(export -> export.getState() != Worker.State.SUCCEEDED).ifPresent(Export::cancel);
    }

    /** What the window has worked out, or the same design planned for longer. */
    private Supplier<Product> product() {
        var built = desk.builtProperty().get().orElseThrow();
        var ready = desk.productProperty().get();
        var effort = seconds.getValue() > 0 ? Effort.seconds(seconds.getValue()) : Effort.USUAL;
        boolean isReady = effort == Effort.USUAL && desk.stageProperty().get() == Stage.DONE;
        return () -> ready.filter(product -> isReady)
                .orElseGet(() -> Product.of(built.furniture().design(), effort));
    }

    private void end(String words) {
        said.textProperty().unbind();
        bar.progressProperty().unbind();
        bar.setVisible(false);
        cancel.setDisable(true);
        running = Optional.empty();
        said.setText(words);
    }

    private String reason(Throwable failure) {
        if (!(failure instanceof OutputException)) {
            dialogs.fault("The files could not be made.", failure.toString());
        }
        return "Nothing was written: " + failure.getMessage();
    }

    /** What was said last. */
    String said() {
        return said.getText();
    }

    boolean isRunning() {
        return running.isPresent();
    }
}
