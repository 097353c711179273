package org.standwright.viewer.scene;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.Rectangle;

/** Brings colours from the style sheet, which knows no materials or lights, into 3D: by swatches too small to see. */
final class Palette extends Pane {
    private final Map<String, ObservableValue<Color>> colours = new HashMap<>();
    private final Map<String, Material> materials = new HashMap<>();

    Palette() {
        setManaged(false);
        setMouseTransparent(true);
        getStyleClass().add("palette");
    }

    /** The fill that the style sheet gives to {@code .palette > .styleClass}. */
    ObservableValue<Color> colour(String styleClass) {
        return colours.computeIfAbsent(styleClass, this::swatch);
    }

    /** A surface that is lit. */
    Material material(Tone tone) {
        return materials.computeIfAbsent(tone.styleClass(), name -> lit(colour(name)));
    }

    /** A surface that is lit, as far as one sees through as through {@code .see-through}. */
    Material glass(Tone tone) {
        return materials.computeIfAbsent("glass " + tone.styleClass(), name -> lit(thinned(colour(tone.styleClass()))));
    }

    /** Has its colour in any light, as lines need it, which face nowhere. */
    Material glow(String styleClass) {
        return materials.computeIfAbsent("glow " + styleClass, name -> {
            var material = new PhongMaterial(Color.BLACK);
            material.selfIlluminationMapProperty().bind(colour(styleClass).map(Palette::dot));
            return material;
        });
    }

    private static Material lit(ObservableValue<Color> colour) {
        var material = new PhongMaterial();
        material.diffuseColorProperty().bind(colour.map(Palette::premultiplied));
        return material;
    }

    private ObservableValue<Color> thinned(ObservableValue<Color> colour) {
        var through = colour("see-through");
        return Bindings.createObjectBinding(
                () -> colour.getValue().deriveColor(0, 1, 1, through.getValue().getOpacity()), colour, through);
    }

    /** As the shader mixes it: what is half transparent adds half its colour. */
    private static Color premultiplied(Color colour) {
        double share = colour.getOpacity();
        return new Color(share * colour.getRed(), share * colour.getGreen(), share * colour.getBlue(), share);
    }

    private static Image dot(Color colour) {
        var image = new WritableImage(1, 1);
        image.getPixelWriter().setColor(0, 0, colour);
        return image;
    }

    private ObservableValue<Color> swatch(String styleClass) {
        var swatch = new Rectangle();
        swatch.getStyleClass().addAll("swatch", styleClass);
        getChildren().add(swatch);
        return Bindings.createObjectBinding(() -> (Color) swatch.getFill(), swatch.fillProperty());
    }
}
