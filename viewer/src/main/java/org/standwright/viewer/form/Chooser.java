package org.standwright.viewer.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import org.standwright.file.form.Choice;

/** A box of choices whose first may be to leave the field out. What stands there need not be one of them. */
final class Chooser {
    private static final String NOTHING = "";
    private static final String STANDARD = "form-standard";

    private final ComboBox<Choice> box = new ComboBox<>();
    private final Consumer<String> choose;
    private final Runnable clear;
    private Supplier<List<Choice>> choices = List::of;
    private boolean showing;

    /**
     * @param choose gets the JSON of what is chosen
     * @param clear leaves the field out
     */
    Chooser(Consumer<String> choose, Runnable clear) {
        this.choose = choose;
        this.clear = clear;
        box.setMaxWidth(Double.MAX_VALUE);
        box.setButtonCell(new ShownCell());
        box.setOnAction(event -> chosen());
        box.addEventHandler(ComboBox.ON_SHOWING, event -> fill());
        box.focusedProperty().subscribe(focused -> {
            if (focused) {
                fill();
            }
        });
    }

    ComboBox<Choice> box() {
        return box;
    }

    /**
     * @param value that is written; empty where none is
     * @param standard words for what holds then
     * @param choices asked for when the box is used
     */
    void show(Optional<Choice> value, String standard, boolean canBeLeftOut, Supplier<List<Choice>> choices) {
        showing = true;
        this.choices = () -> canBeLeftOut ? withNothing(standard, choices.get()) : choices.get();
        box.setPromptText(standard);
        // a value that is in no list is shown as if there were none
        value.filter(shown -> !box.getItems().contains(shown))
                .ifPresent(shown -> box.getItems().setAll(shown));
        if (!value.equals(Optional.ofNullable(box.getValue()))) {
            box.setValue(value.orElse(null));
        }
        showing = false;
    }

    private void fill() {
        showing = true;
        var value = box.getValue();
        var now = new ArrayList<>(choices.get());
        if (value != null && !now.contains(value)) {
            now.add(value);
        }
        if (!box.getItems().equals(now)) {
            box.getItems().setAll(now);
            box.setValue(value);
        }
        showing = false;
    }

    private void chosen() {
        var choice = box.getValue();
        if (showing || choice == null) {
            return;
        }
        if (choice.json().equals(NOTHING)) {
            showing = true;
            box.setValue(null);
            showing = false;
            clear.run();
        } else {
            choose.accept(choice.json());
        }
    }

    private static List<Choice> withNothing(String standard, List<Choice> choices) {
        var all = new ArrayList<Choice>();
        all.add(new Choice(standard.isEmpty() ? "None" : "As usual: " + standard, NOTHING));
        all.addAll(choices);
        return all;
    }

    /** Shows the prompt again after a value was taken away, too. */
    private final class ShownCell extends ListCell<Choice> {
        @Override
        protected void updateItem(Choice choice, boolean isEmpty) {
            super.updateItem(choice, isEmpty);
            boolean isStandard = isEmpty || choice == null;
            setText(isStandard ? box.getPromptText() : choice.label());
            getStyleClass().remove(STANDARD);
            if (isStandard) {
                getStyleClass().add(STANDARD);
            }
        }
    }
}
