package org.standwright.viewer.button;

import javafx.beans.property.Property;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;

/** Buttons that show a sign and say in words what they do. */
public final class IconButton {
    private IconButton() {}

    /**
     * A sign alone; the words are its tooltip and what a screen reader says.
     *
     * @param words 'Next page (Page Down)'
     */
    public static Button of(Feather sign, String words, Runnable action) {
        var button = dressed(new Button(), sign, words);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** A button that stays down while something is so. */
    public static ToggleButton toggle(Feather sign, String words, Property<Boolean> property) {
        var button = dressed(new ToggleButton(), sign, words);
        button.selectedProperty().bindBidirectional(property);
        return button;
    }

    /** A sign with a label beside it. */
    public static Button labelled(Feather sign, String label, String words, Runnable action) {
        var button = of(sign, words, action);
        button.getStyleClass().remove("flat");
        button.setText(label);
        return button;
    }

    private static <B extends ButtonBase> B dressed(B button, Feather sign, String words) {
        Sign.on(button, sign);
        button.getStyleClass().addAll("icon-button", "flat");
        button.setTooltip(new Tooltip(words));
        button.setAccessibleText(words);
        return button;
    }
}
