package org.standwright.viewer.button;

import javafx.scene.control.Labeled;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Signs beside words, as large as these. */
public final class Sign {
    /** Beside capitals a sign looks as large as they are when it is this much larger than the letters. */
    private static final double BESIDE_LETTERS = 1.25;

    private Sign() {}

    /** Puts a sign on a label or button; a sign there before goes. It grows with the letters. */
    public static void on(Labeled labeled, Feather sign) {
        var icon = new FontIcon(sign);
        labeled.fontProperty().subscribe(font -> resize(icon, Math.round(BESIDE_LETTERS * font.getSize())));
        labeled.setGraphic(icon);
    }

    /** By the style that icons keep for themselves: em there would be of their own letters, and themes set the size. */
    private static void resize(FontIcon icon, long pixels) {
        var others = icon.getStyle().replaceAll("-fx-icon-size:[^;]*;", "");
        icon.setStyle(others + "-fx-icon-size: " + pixels + "px;");
    }
}
