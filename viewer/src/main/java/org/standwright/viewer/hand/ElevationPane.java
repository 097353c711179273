package org.standwright.viewer.hand;

import java.util.List;
import java.util.Optional;
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
    private static final HandPane.Words WORDS = new HandPane.Words(
            "Click on something, or use the arrow keys. Drag holders, and obstacles or their edges.",
            "This design is no wall, so it has no elevation to edit.");

    private final HandPane<WallAction> pane;
    private final Nowhere nowhere = new Nowhere(this::pick);

    public ElevationPane(Desk desk) {
        getStyleClass().add("elevation-pane");
        pane = new HandPane<>(desk, tools(), this::read, WORDS);
        pane.setRight(nowhere);
        setCenter(pane);
    }

    private void pick(String key) {
        pane.pick(Optional.of(key));
        pane.focus();
    }

    private Optional<Subject<WallAction>> read(Matched.Pair pair) {
        var model = pair.built().furniture() instanceof CleatWall wall
                ? Optional.of(WallModel.of(pair.document().text(), wall))
                : Optional.<WallModel>empty();
        nowhere.show(model.map(WallModel::unhung).orElse(List.of()));
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
}
