package org.standwright.viewer.hand;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.standwright.viewer.hand.wall.WallModel.Unhung;

/** What hangs nowhere, and why; there is no list where everything hangs. */
final class Nowhere extends VBox {
    private final VBox list = new VBox();
    private final Consumer<String> picked;

    /** @param picked gets the key of what is clicked on */
    Nowhere(Consumer<String> picked) {
        this.picked = picked;
        getStyleClass().add("nowhere");
        var title = new Label("Hangs nowhere");
        title.getStyleClass().add("group-name");
        var room = new ScrollPane(list);
        room.setFitToWidth(true);
        setVgrow(room, Priority.ALWAYS);
        getChildren().setAll(title, room);
        managedProperty().bind(visibleProperty());
    }

    void show(List<Unhung> holders) {
        setVisible(!holders.isEmpty());
        list.getChildren().setAll(holders.stream().map(this::line).toList());
    }

    private Button line(Unhung holder) {
        var line = new Button(holder.name() + ": " + holder.why());
        line.getStyleClass().addAll("flat", "unhung");
        line.setWrapText(true);
        line.setMaxWidth(Double.MAX_VALUE);
        line.setOnAction(event -> picked.accept(holder.key()));
        return line;
    }
}
