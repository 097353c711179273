package org.standwright.viewer.scene.tools;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import org.standwright.unit.Measure;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;

/** How long the boards are whose way is shown. */
final class BoardBar extends HBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("danger");
    private static final double LONGEST = 10_000;

    private final AroundModel model;
    private final ObservableValue<Units> units;
    private final TextField field = new TextField();
    private final Label problem = new Label();

    BoardBar(AroundModel model, ObservableValue<Units> units) {
        this.model = model;
        this.units = units;
        getStyleClass().add("line");
        problem.getStyleClass().add("problem");
        field.setPrefColumnCount(7);
        field.setTooltip(new Tooltip("Length of the boards; Enter shows their way"));
        field.setAccessibleText("Length of the boards");
        field.setOnAction(entered -> take());
        field.focusedProperty().subscribe(focused -> {
            if (!focused) {
                take();
            }
        });
        model.boardProperty().subscribe(this::write);
        units.subscribe(this::write);
        getChildren().setAll(new Label("Boards"), field, problem);
        visibleProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.feedProperty().get() && model.hasFeed().getValue(),
                        model.feedProperty(),
                        model.aroundProperty()));
        managedProperty().bind(visibleProperty());
    }

    private void write() {
        field.setText(units.getValue().length(model.boardProperty().get()));
        say("");
    }

    /** A length that has not been touched stays as exact as it is. */
    private void take() {
        var now = units.getValue();
        if (field.getText().equals(now.length(model.boardProperty().get()))) {
            say("");
            return;
        }
        try {
            double length = Measure.LENGTH.parse(field.getText(), now.unitOf(Measure.LENGTH));
            if (length > 0 && length <= LONGEST) {
                model.boardProperty().set(length);
                write();
            } else {
                say("Must be from 0 to " + now.length(LONGEST) + ".");
            }
        } catch (QuantityException notOne) {
            say(notOne.getMessage());
        }
    }

    private void say(String words) {
        problem.setText(words);
        field.pseudoClassStateChanged(WRONG, !words.isEmpty());
    }
}
