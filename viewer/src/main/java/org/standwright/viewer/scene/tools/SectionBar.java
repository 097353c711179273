package org.standwright.viewer.scene.tools;

import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.unit.Units;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

/** Where the furniture is cut: along which axis, how far, and which side stays. */
final class SectionBar extends HBox {
    private final SectionModel model;

    SectionBar(SectionModel model, ObservableValue<Units> units) {
        this.model = model;
        getStyleClass().add("line");
        var place = new Label();
        place.getStyleClass().add("place");
        place.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> units.getValue().length(model.atProperty().get()), model.atProperty(), units));
        getChildren().setAll(new Label("Cut"), axis(), slider(), place, side());
        visibleProperty().bind(model.onProperty());
        managedProperty().bind(visibleProperty());
    }

    private ChoiceBox<Across> axis() {
        var axis = new ChoiceBox<Across>();
        axis.getItems().setAll(Across.values());
        axis.setConverter(written(SectionBar::words));
        axis.valueProperty().bindBidirectional(model.acrossProperty());
        axis.setTooltip(new Tooltip("The way that the cut moves"));
        axis.setAccessibleText("The way that the cut moves");
        return axis;
    }

    private Slider slider() {
        var slider = new Slider();
        model.rangeProperty().subscribe(range -> {
            slider.setMin(Math.min(range.from(), slider.getMin())); // never crossed on the way
            slider.setMax(range.to());
            slider.setMin(range.from());
        });
        slider.valueProperty().bindBidirectional(model.atProperty());
        slider.setTooltip(new Tooltip("Move the cut (comma and full stop)"));
        slider.setAccessibleText("Place of the cut");
        return slider;
    }

    private Button side() {
        var side = new Button("", new FontIcon(Feather.REPEAT));
        side.getStyleClass().add("flat");
        side.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> "Keeps "
                                + words(
                                        model.acrossProperty().get(),
                                        model.keptProperty().get()),
                        model.acrossProperty(),
                        model.keptProperty()));
        side.setTooltip(new Tooltip("Keep the other side (Shift+X)"));
        side.setOnAction(pressed -> model.keepOtherSide());
        return side;
    }

    private static String words(Across across) {
        return switch (across) {
            case X -> "left to right";
            case Y -> "front to back";
            case Z -> "up and down";
        };
    }

    private static String words(Across across, Kept kept) {
        boolean low = kept == Kept.LOWER;
        return switch (across) {
            case X -> low ? "the left side" : "the right side";
            case Y -> low ? "the front" : "the back";
            case Z -> low ? "what is below" : "what is above";
        };
    }

    private static <T> StringConverter<T> written(Function<T, String> words) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return words.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("'" + text + "' is chosen, never typed.");
            }
        };
    }
}
