package org.standwright.viewer.scene.tools;

import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Group;
import javafx.scene.Node;

/**
 * The place of one thing in the 3D view. It is drawn when it is first to be seen, and again only when it has changed.
 *
 * @param <T> what describes it
 */
final class Slot<T> {
    private final Function<T, Node> draw;
    private final Group group = new Group();
    private Optional<T> drawn = Optional.empty();

    Slot(Function<T, Node> draw) {
        this.draw = draw;
    }

    Group node() {
        return group;
    }

    void show(Optional<T> wanted) {
        if (wanted.isPresent() && !wanted.equals(drawn)) {
            group.getChildren().setAll(draw.apply(wanted.get()));
            drawn = wanted;
        }
        group.setVisible(wanted.isPresent());
    }
}
