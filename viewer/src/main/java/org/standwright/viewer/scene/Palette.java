package org.standwright.viewer.scene;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.Rectangle;

/** Brings colours from the style sheet, which knows no materials or lights, into 3D: by swatches too small to see. */
final class Palette extends Pane {
    private final Map<String, ObservableValue<Color>> colours = new HashMap<>();
    private final Map<Tone, Material> materials = new HashMap<>();

    Palette() {
        setManaged(false);
        setMouseTransparent(true);
        getStyleClass().add("palette");
    }

    /** The fill that the style sheet gives to {@code .palette > .styleClass}. */
    ObservableValue<Color> colour(String styleClass) {
        return colours.computeIfAbsent(styleClass, this::swatch);
    }

    Material material(Tone tone) {
        return materials.computeIfAbsent(tone, this::paint);
    }

    private Material paint(Tone tone) {
        var material = new PhongMaterial();
        material.diffuseColorProperty().bind(colour(tone.styleClass()));
        return material;
    }

    private ObservableValue<Color> swatch(String styleClass) {
        var swatch = new Rectangle();
        swatch.getStyleClass().addAll("swatch", styleClass);
        getChildren().add(swatch);
        return Bindings.createObjectBinding(() -> (Color) swatch.getFill(), swatch.fillProperty());
    }
}
