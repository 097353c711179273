package org.standwright.viewer.app;

import java.util.Locale;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.Parent;

/** How the window looks: light or dark, and how large its text is. */
final class Appearance {
    private static final int USUAL_PIXELS = 14;
    private static final int LEAST_PERCENT = 75;
    private static final int MOST_PERCENT = 200;
    private static final int STEP = 25;
    private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

    private final ObjectProperty<Look> look = new SimpleObjectProperty<>(this, "look", Look.LIGHT);
    private final ObjectProperty<Integer> percent = new SimpleObjectProperty<>(this, "percent", 100);

    /** Every window of the application takes the style sheet; this root takes size and style class. */
    void dress(Parent root) {
        look.subscribe(now -> {
            Application.setUserAgentStylesheet(now.styleSheet());
            root.pseudoClassStateChanged(DARK, now == Look.DARK);
        });
        percent.subscribe(now -> size(root));
    }

    /** Gives a root text of the present size. */
    void size(Parent root) {
        root.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", USUAL_PIXELS * percent.get() / 100.0));
    }

    void turn() {
        look.set(look.get().other());
    }

    void larger() {
        percent.set(Math.min(MOST_PERCENT, percent.get() + STEP));
    }

    void smaller() {
        percent.set(Math.max(LEAST_PERCENT, percent.get() - STEP));
    }

    ObjectProperty<Look> lookProperty() {
        return look;
    }

    /** Size of text, per cent of the usual one; 75 to 200. */
    ObjectProperty<Integer> percentProperty() {
        return percent;
    }
}
