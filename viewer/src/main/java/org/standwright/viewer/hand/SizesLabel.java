package org.standwright.viewer.hand;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;

/** The sizes of what is moved, beside the pointer. */
final class SizesLabel extends Label {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
    private static final double BESIDE = 18;

    SizesLabel() {
        getStyleClass().add("sizes");
        setManaged(false);
        setMouseTransparent(true);
        setVisible(false);
    }

    /**
     * @param width of all the room, pixels
     * @param height of all the room, pixels
     */
    void show(List<String> sizes, boolean isRefused, double x, double y, double width, double height) {
        setText(String.join("\n", sizes) + (isRefused ? "\n\u2716 cannot be built like this" : ""));
        pseudoClassStateChanged(REFUSED, isRefused);
        setVisible(true);
        applyCss();
        double own = prefWidth(-1);
        double high = prefHeight(-1);
        double left = x + BESIDE + own > width ? x - BESIDE - own : x + BESIDE;
        resizeRelocate(Math.max(0, left), Math.max(0, Math.min(height - high, y - high / 2)), own, high);
    }
}
