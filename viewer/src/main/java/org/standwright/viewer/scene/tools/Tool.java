package org.standwright.viewer.scene.tools;

import javafx.beans.property.Property;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Buttons of the strip: a sign, and words for those who wait with the pointer or listen. */
final class Tool {
    private Tool() {}

    static Button button(Feather sign, String words, Runnable work) {
        var button = dressed(new Button(), sign, words);
        button.setOnAction(pressed -> work.run());
        return button;
    }

    /** A button that stays down while something is so. */
    static ToggleButton toggle(Feather sign, String words, Property<Boolean> property) {
        var button = dressed(new ToggleButton(), sign, words);
        button.selectedProperty().bindBidirectional(property);
        return button;
    }

    private static <B extends ButtonBase> B dressed(B button, Feather sign, String words) {
        button.setGraphic(new FontIcon(sign));
        button.getStyleClass().addAll("button-icon", "flat");
        button.setTooltip(new Tooltip(words));
        button.setAccessibleText(words);
        return button;
    }
}
