package org.standwright.viewer.finding;

import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.standwright.check.Gauge;

/** How much of a limit is used, as a bar with a mark where all of it is; what is beyond goes past the mark. */
final class GaugeBar extends Region {
    /** The mark's place along the bar, so that there is room beyond it. */
    private static final double LIMIT = 0.7;

    private final double used;
    private final Region fill = part("fill");
    private final Region mark = part("mark");

    GaugeBar(Gauge gauge) {
        getStyleClass().addAll("gauge-bar", Weight.of(gauge.severity()).styleClass());
        used = Math.min(1 / LIMIT, gauge.used());
        getChildren().addAll(fill, mark);
        setAccessibleText(gauge.usedWords() + " of the limit is used");
    }

    private static Region part(String styleClass) {
        var region = new StackPane();
        region.getStyleClass().add(styleClass);
        return region;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        fill.resizeRelocate(0, 0.2 * height, Math.max(2, used * LIMIT * width), 0.6 * height);
        mark.resizeRelocate(LIMIT * width - 1, 0, 2, height);
    }
}
