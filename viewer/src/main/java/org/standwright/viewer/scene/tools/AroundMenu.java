package org.standwright.viewer.scene.tools;

import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Chooses what is shown around the furniture. */
final class AroundMenu extends MenuButton {
    AroundMenu(AroundModel model) {
        super("", new FontIcon(Feather.GRID));
        getStyleClass().addAll("button-icon", "flat");
        setTooltip(new Tooltip("Around it: floor, person, boards, wall"));
        setAccessibleText("What is shown around it");
        getItems()
                .setAll(
                        item("Floor, lines every 100 mm  (G)", model.floorProperty()),
                        item("Person for scale  (S)", model.personProperty()),
                        item("Way of the boards  (B)", model.feedProperty(), model.hasFeed()),
                        item("Wall with what is on it  (W)", model.wallProperty(), model.hasWalls()));
    }

    private static CheckMenuItem item(String words, BooleanProperty seen) {
        var item = new CheckMenuItem(words);
        item.selectedProperty().bindBidirectional(seen);
        return item;
    }

    private static CheckMenuItem item(String words, BooleanProperty seen, ObservableValue<Boolean> there) {
        var item = item(words, seen);
        item.disableProperty().bind(there.map(is -> !is));
        return item;
    }
}
