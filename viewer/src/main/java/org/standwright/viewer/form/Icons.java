package org.standwright.viewer.form;

import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;

/** Small buttons with a picture, whose words are a tooltip and for screen readers. */
final class Icons {
    private static final PseudoClass NEAR = PseudoClass.getPseudoClass("near");

    private Icons() {}

    static Button button(Ikon icon, String words, Runnable action) {
        var button = new Button();
        button.setOnAction(event -> action.run());
        return dress(button, icon, words);
    }

    static <B extends ButtonBase> B dress(B button, Ikon icon, String words) {
        button.setGraphic(new FontIcon(icon));
        button.getStyleClass().addAll("flat", "form-icon");
        name(button, words);
        return button;
    }

    /**
     * Shows a button only while the pointer is over its line or the focus is near. A rule with :focus-within would do, but
     * in JavaFX 21 texts inside the same parent then lose their colour.
     */
    static void showNear(ButtonBase button, Node line, Node... focused) {
        button.getStyleClass().add("form-quiet");
        Runnable look = () -> button.pseudoClassStateChanged(
                NEAR, line.isHover() || button.isFocused() || Stream.of(focused).anyMatch(Node::isFocused));
        line.hoverProperty().subscribe(look);
        button.focusedProperty().subscribe(look);
        Stream.of(focused).forEach(node -> node.focusedProperty().subscribe(look));
    }

    /** The words may change with what the button is about. */
    static void name(ButtonBase button, String words) {
        button.setAccessibleText(words);
        if (button.getTooltip() == null) {
            button.setOnMouseEntered(event -> button.setTooltip(new Tooltip(button.getAccessibleText())));
        } else {
            button.getTooltip().setText(words);
        }
    }
}
