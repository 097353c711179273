package org.standwright.viewer.hand;

import static javafx.scene.input.KeyCombination.ALT_DOWN;
import static javafx.scene.input.KeyCombination.SHIFT_DOWN;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.design.built.Stand;
import org.standwright.viewer.hand.change.Subject;
import org.standwright.viewer.hand.stand.FrontAction;
import org.standwright.viewer.hand.stand.FrontModel;
import org.standwright.viewer.work.Desk;

/** The front of a stand: gaps between fronts and partitions between bays are dragged, fronts and bays are remade. */
public final class FrontPane extends BorderPane {
    private static final HandPane.Words WORDS = new HandPane.Words(
            "Click on something, or use the arrow keys. Drag what lies between two things to move it.",
            "This design is no stand, so it has no front to edit.");

    public FrontPane(Desk desk) {
        getStyleClass().add("front-pane");
        setCenter(new HandPane<>(desk, tools(), FrontPane::read, WORDS));
    }

    private static Optional<Subject<FrontAction>> read(Matched.Pair pair) {
        return pair.built().furniture() instanceof Stand stand
                ? Optional.of(FrontModel.of(pair.document().text(), stand))
                : Optional.empty();
    }

    private static List<Tool<FrontAction>> tools() {
        return List.of(
                tool(FrontAction.ADD_DRAWER, Feather.PLUS, "Drawer", KeyCode.A),
                tool(FrontAction.REMOVE, Feather.TRASH_2, "Remove", KeyCode.DELETE),
                tool(FrontAction.SPLIT, Feather.SCISSORS, "Split", KeyCode.S),
                tool(FrontAction.JOIN, Feather.LINK, "Join", KeyCode.J),
                tool(FrontAction.UP, Feather.ARROW_UP, "Up", KeyCode.UP, ALT_DOWN),
                tool(FrontAction.DOWN, Feather.ARROW_DOWN, "Down", KeyCode.DOWN, ALT_DOWN),
                tool(FrontAction.DRAWERS, Feather.SERVER, "Drawers", KeyCode.R),
                tool(FrontAction.DOOR, Feather.SIDEBAR, "Door", KeyCode.D),
                tool(FrontAction.OPEN, Feather.SQUARE, "Open shelf", KeyCode.O),
                tool(FrontAction.ADD_BAY, Feather.PLUS, "Bay", KeyCode.B),
                tool(FrontAction.REMOVE_BAY, Feather.TRASH_2, "Remove", KeyCode.DELETE, SHIFT_DOWN),
                tool(FrontAction.BAY_LEFT, Feather.ARROW_LEFT, "Left", KeyCode.LEFT, ALT_DOWN),
                tool(FrontAction.BAY_RIGHT, Feather.ARROW_RIGHT, "Right", KeyCode.RIGHT, ALT_DOWN),
                tool(FrontAction.SPLIT_BAY, Feather.COLUMNS, "Split", KeyCode.S, SHIFT_DOWN));
    }

    private static Tool<FrontAction> tool(
            FrontAction action, Feather sign, String label, KeyCode key, KeyCombination.Modifier... modifiers) {
        return new Tool<>(
                action,
                action.isOfBay() ? "Bay" : "Front",
                sign,
                label,
                action.words(),
                new KeyCodeCombination(key, modifiers));
    }
}
