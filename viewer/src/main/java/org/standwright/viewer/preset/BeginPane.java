package org.standwright.viewer.preset;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import org.standwright.file.Preset;
import org.standwright.file.text.DesignFileException;
import org.standwright.unit.Units;
import org.standwright.viewer.work.Opened;

/** A page of things to begin with; choosing one lays it on the desk. */
public final class BeginPane extends ScrollPane {
    private static final double WIDTH = 150;
    private static final double HEIGHT = 130;

    private final Beginning beginning;
    private final Executor pictures;
    private final Consumer<Opened> chosen;
    private final ComboBox<Units> units = new ComboBox<>();
    private final Label refused = new Label();

    /** @param pictures where pictures are made, away from the screen's thread */
    public BeginPane(Beginning beginning, Units usual, Executor pictures, Consumer<Opened> chosen) {
        this.beginning = beginning;
        this.pictures = pictures;
        this.chosen = chosen;
        getStyleClass().add("begin-pane");
        getStylesheets().add(BeginPane.class.getResource("preset.css").toExternalForm());
        units.getItems().setAll(Units.values());
        units.setValue(usual);
        units.setConverter(new UnitWords());
        units.setAccessibleText("Unit that you measure in");
        refused.getStyleClass().add("refused");
        refused.setWrapText(true);
        var page = new VBox(
                heading("Your own machine or wall"),
                line(new Label("Measured in"), units),
                machine(),
                wall(),
                refused,
                heading("Complete designs"),
                designs());
        page.getStyleClass().add("page");
        setContent(page);
        setFitToWidth(true);
    }

    private static Label heading(String words) {
        var label = new Label(words);
        label.getStyleClass().add("title-3");
        return label;
    }

    private static FlowPane line(Node... nodes) {
        var line = new FlowPane(nodes);
        line.getStyleClass().add("line");
        return line;
    }

    private Node machine() {
        var machines = new ComboBox<String>();
        machines.getItems().setAll(beginning.machines());
        machines.getSelectionModel().selectFirst();
        machines.setAccessibleText("Machine");
        var begin = new Button("Begin a stand for it");
        begin.getStyleClass().add("begin-stand");
        begin.setOnAction(pressed -> choose(() -> beginning.standFor(machines.getValue(), units.getValue())));
        return line(new Label("Machine"), machines, begin);
    }

    private Node wall() {
        var width = field("Width of the wall", "wall-width");
        var height = field("Height of the wall", "wall-height");
        var begin = new Button("Begin a wall of cleats");
        begin.getStyleClass().add("begin-wall");
        begin.setOnAction(pressed -> choose(() -> beginning.wall(width.getText(), height.getText(), units.getValue())));
        units.valueProperty().subscribe(unit -> {
            width.setText(unit == Units.MM ? "3600 mm" : "12 ft");
            height.setText(unit == Units.MM ? "2400 mm" : "8 ft");
        });
        return line(new Label("Wall"), width, new Label("wide,"), height, new Label("high"), begin);
    }

    private static TextField field(String words, String styleClass) {
        var field = new TextField();
        field.setPrefColumnCount(7);
        field.setAccessibleText(words);
        field.getStyleClass().add(styleClass);
        return field;
    }

    private void choose(Supplier<Opened> begun) {
        try {
            refused.setText("");
            chosen.accept(begun.get());
        } catch (DesignFileException | IllegalArgumentException refusal) {
            refused.setText("✖ " + refusal.getMessage());
        }
    }

    private Node designs() {
        var tiles = new TilePane();
        tiles.getStyleClass().add("tiles");
        beginning.designs().forEach(design -> tiles.getChildren().add(tile(design)));
        return tiles;
    }

    private Node tile(Preset design) {
        var portrait = new Portrait(WIDTH, HEIGHT);
        var tile = new Button(design.name(), portrait);
        tile.setContentDisplay(ContentDisplay.TOP);
        tile.setWrapText(true);
        tile.getStyleClass().addAll("flat", "tile");
        tile.setOnAction(pressed -> choose(() -> beginning.opened(design)));
        pictures.execute(() -> beginning
                .look(design)
                .ifPresent(look -> Platform.runLater(() -> {
                    portrait.show(look.silhouette());
                    tile.setText(look.name());
                })));
        return tile;
    }
}
