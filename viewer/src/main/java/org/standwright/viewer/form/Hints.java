package org.standwright.viewer.form;

import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/** Tooltips that are made when a pointer first comes near: a form has hundreds. */
final class Hints {
    private static final double WIDTH = 360;

    private Hints() {}

    static void on(Control control, Supplier<String> words) {
        control.addEventHandler(MouseEvent.MOUSE_ENTERED, event -> {
            if (control.getTooltip() == null && !words.get().isEmpty()) {
                var tooltip = new Tooltip(sentence(words.get()));
                tooltip.setWrapText(true);
                tooltip.setMaxWidth(WIDTH);
                control.setTooltip(tooltip);
            }
        });
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }
}
