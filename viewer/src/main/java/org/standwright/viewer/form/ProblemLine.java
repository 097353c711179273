package org.standwright.viewer.form;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** What is wrong with a row, under it; takes no room while nothing is. */
final class ProblemLine extends Label {

    ProblemLine() {
        getStyleClass().add("form-problem");
        setAccessibleRole(AccessibleRole.TEXT);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        show(List.of());
    }

    void show(List<String> problems) {
        var words = String.join("\n", problems);
        if (!words.isEmpty() && getGraphic() == null) {
            setGraphic(new FontIcon(Feather.ALERT_CIRCLE));
        }
        setText(words);
        setVisible(!words.isEmpty());
        setManaged(!words.isEmpty());
    }
}
