package org.standwright.viewer.hand;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.layout.BorderPane;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.design.built.CleatWall;
import org.standwright.viewer.hand.change.Subject;
import org.standwright.viewer.hand.wall.WallAction;
import org.standwright.viewer.hand.wall.WallModel;
import org.standwright.viewer.work.Desk;

/** The walls of a design side by side: holders are hung elsewhere, obstacles moved and resized. */
public final class ElevationPane extends BorderPane {
    private final ListView<WallModel.Unhung> nowhere = new ListView<>();
    private final TitledPane list = new TitledPane("Hangs nowhere", nowhere);

    public ElevationPane(Desk desk) {
        getStyleClass().add("elevation-pane");
        list.setCollapsible(false);
        list.managedProperty().bind(list.visibleProperty());
        nowhere.setAccessibleText("Holders that hang nowhere");
        nowhere.setCellFactory(view -> new Why());
        var pane = new HandPane<>(desk, tools(), this::read, "This design is no wall; its front is under Front.");
        pane.setRight(list);
        nowhere.getSelectionModel().selectedItemProperty().subscribe(one -> {
            if (one != null) {
                pane.pick(Optional.of(one.key()));
            }
        });
        setCenter(pane);
    }

    private Optional<Subject<WallAction>> read(Matched.Pair pair) {
        var model = pair.built().furniture() instanceof CleatWall wall
                ? Optional.of(WallModel.of(pair.document().text(), wall))
                : Optional.<WallModel>empty();
        var unhung = model.map(WallModel::unhung).orElse(List.of());
        if (!nowhere.getItems().equals(unhung)) {
            nowhere.getItems().setAll(unhung);
        }
        list.setVisible(!unhung.isEmpty());
        return model.map(subject -> subject);
    }

    private static List<Tool<WallAction>> tools() {
        return List.of(
                tool(WallAction.PLACE_AGAIN, Feather.COMPASS, "Find a place", KeyCode.P),
                tool(WallAction.DUPLICATE, Feather.COPY, "Duplicate", KeyCode.D),
                tool(WallAction.REMOVE, Feather.TRASH_2, "Remove", KeyCode.DELETE));
    }

    private static Tool<WallAction> tool(WallAction action, Feather sign, String label, KeyCode key) {
        return new Tool<>(action, "Picked", sign, label, action.words(), new KeyCodeCombination(key));
    }

    /** A holder and why it hangs nowhere. */
    private static final class Why extends ListCell<WallModel.Unhung> {
        Why() {
            setWrapText(true);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(WallModel.Unhung one, boolean empty) {
            super.updateItem(one, empty);
            setText(empty ? "" : one.name() + ": " + one.why());
        }
    }
}
