package org.standwright.viewer.preset;

import java.util.Locale;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;

/** A silhouette drawn into a box of this many pixels, standing on its lower edge. */
final class Portrait extends Pane {
    private final double width;
    private final double height;

    Portrait(double width, double height) {
        this.width = width;
        this.height = height;
        getStyleClass().add("portrait");
        setMinSize(width, height);
        setPrefSize(width, height);
        setMaxSize(width, height);
    }

    void show(Silhouette silhouette) {
        var size = silhouette.box().size();
        double scale = Math.min(width / size.x(), height / size.z());
        double left = (width - scale * size.x()) / 2;
        getChildren()
                .setAll(silhouette.boxes().stream()
                        .map(seen -> {
                            var box = seen.box();
                            var shape = new Rectangle(
                                    left
                                            + scale
                                                    * (box.min().x()
                                                            - silhouette
                                                                    .box()
                                                                    .min()
                                                                    .x()),
                                    height
                                            - scale
                                                    * (box.max().z()
                                                            - silhouette
                                                                    .box()
                                                                    .min()
                                                                    .z()),
                                    scale * box.size().x(),
                                    scale * box.size().z());
                            shape.getStyleClass().add(seen.stuff().name().toLowerCase(Locale.ROOT));
                            return shape;
                        })
                        .toList());
    }
}
