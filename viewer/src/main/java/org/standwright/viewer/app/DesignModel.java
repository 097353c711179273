package org.standwright.viewer.app;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/** What the window shows: a piece of furniture, or none yet, and the reason why the last one asked for is not shown. */
final class DesignModel {
    private final ReadOnlyObjectWrapper<Optional<OpenedDesign>> design =
            new ReadOnlyObjectWrapper<>(this, "design", Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper(this, "problem", "");

    void show(OpenedDesign opened) {
        problem.set("");
        design.set(Optional.of(opened));
    }

    /** What was shown before stays. */
    void refuse(String reason) {
        problem.set(reason);
    }

    ReadOnlyObjectProperty<Optional<OpenedDesign>> designProperty() {
        return design.getReadOnlyProperty();
    }

    /** The line beside the name. */
    ObservableValue<String> sizes() {
        return Bindings.createStringBinding(
                () -> design.get().map(OpenedDesign::sizes).orElse(problem.get().isEmpty() ? "One moment …" : ""),
                design,
                problem);
    }

    /** Empty when there is none. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
