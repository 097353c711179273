package org.standwright.viewer.app;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/** What the window shows: a stand, or none yet, and the reason why the last one asked for is not shown. */
final class StandModel {
    private final ReadOnlyObjectWrapper<Optional<OpenedStand>> stand =
            new ReadOnlyObjectWrapper<>(this, "stand", Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper(this, "problem", "");

    void show(OpenedStand opened) {
        problem.set("");
        stand.set(Optional.of(opened));
    }

    /** What was shown before stays. */
    void refuse(String reason) {
        problem.set(reason);
    }

    ReadOnlyObjectProperty<Optional<OpenedStand>> standProperty() {
        return stand.getReadOnlyProperty();
    }

    /** The line beside the name. */
    ObservableValue<String> sizes() {
        return Bindings.createStringBinding(
                () -> stand.get().map(OpenedStand::sizes).orElse(problem.get().isEmpty() ? "One moment …" : ""),
                stand,
                problem);
    }

    /** Empty when there is none. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
