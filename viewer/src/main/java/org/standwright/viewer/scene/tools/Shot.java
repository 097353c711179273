package org.standwright.viewer.scene.tools;

import javafx.geometry.Rectangle2D;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;

/**
 * A picture of something on the screen with twice as many pixels each way. It is laid out twice as large for that: 3D
 * things that are only scaled come out too bright.
 */
final class Shot {
    private static final int SCALE = 2;
    private static final String TEXT = "-fx-font-size: " + 100 * SCALE + "%;";

    private Shot() {}

    static WritableImage of(Region seen) {
        double width = seen.getWidth();
        double height = seen.getHeight();
        var style = seen.getStyle();
        try {
            seen.setManaged(false); // nobody else lays it out meanwhile
            seen.setStyle(TEXT);
            lay(seen, SCALE * width, SCALE * height);
            var parameters = new SnapshotParameters();
            var bounds = seen.getBoundsInParent();
            parameters.setViewport(new Rectangle2D(bounds.getMinX(), bounds.getMinY(), SCALE * width, SCALE * height));
            return seen.snapshot(parameters, null);
        } finally {
            seen.setStyle(style);
            lay(seen, width, height);
            seen.setManaged(true);
        }
    }

    private static void lay(Region seen, double width, double height) {
        seen.resize(width, height);
        seen.applyCss();
        seen.layout();
    }
}
