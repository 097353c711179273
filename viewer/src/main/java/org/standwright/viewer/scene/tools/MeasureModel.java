package org.standwright.viewer.scene.tools;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.MapChangeListener;
import org.standwright.assembly.Pose;
import org.standwright.solid.PlacedSolid;
import org.standwright.viewer.scene.Hit;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.measure.Face;
import org.standwright.viewer.scene.measure.FaceAt;

/** Measures between faces that are clicked, for as long as it is on. */
final class MeasureModel {
    private final SceneModel scene;
    private final BooleanProperty on = new SimpleBooleanProperty(this, "on");
    private final ReadOnlyObjectWrapper<Reading> reading =
            new ReadOnlyObjectWrapper<>(this, "reading", Reading.NOTHING);
    private List<Mark> marks = List.of();

    MeasureModel(SceneModel scene) {
        this.scene = scene;
        on.subscribe(now -> clear());
        scene.sceneryProperty().subscribe(shown -> {
            if (!marks.stream().allMatch(this::isThere)) {
                clear();
            }
            read();
        });
        scene.explosionProperty().subscribe(factor -> read());
        scene.open().addListener((MapChangeListener<String, Double>) change -> read());
    }

    BooleanProperty onProperty() {
        return on;
    }

    ReadOnlyObjectProperty<Reading> readingProperty() {
        return reading.getReadOnlyProperty();
    }

    /**
     * Takes a click while it is on: the first and the second mark a face, the next begins anew. What is no face of a board
     * marks nothing.
     *
     * @return whether it is on
     */
    boolean take(Optional<Hit> hit) {
        if (on.get()) {
            hit.flatMap(this::mark).ifPresent(mark -> {
                marks = marks.size() == 1 ? List.of(marks.get(0), mark) : List.of(mark);
                read();
            });
        }
        return on.get();
    }

    void clear() {
        marks = List.of();
        read();
    }

    /** Takes the marks away; when there are none, measuring ends. */
    void cancel() {
        if (marks.isEmpty()) {
            on.set(false);
        }
        clear();
    }

    private Optional<Mark> mark(Hit hit) {
        return scene.solid(hit.label()).flatMap(board -> mark(board, hit));
    }

    private Optional<Mark> mark(PlacedSolid board, Hit hit) {
        var local = board.placement(scene.pose().orElseThrow()).local(hit.point());
        return FaceAt.triangle(board.solid(), local).stream()
                .mapToObj(triangle -> new Mark(board.label(), board.solid(), triangle))
                .findFirst();
    }

    private boolean isThere(Mark mark) {
        return scene.solid(mark.label()).filter(mark::isOn).isPresent();
    }

    private void read() {
        reading.set(scene.pose()
                .filter(pose -> !marks.isEmpty())
                .map(pose ->
                        Reading.of(marks.stream().map(mark -> face(mark, pose)).toList()))
                .orElse(Reading.NOTHING));
    }

    private Face face(Mark mark, Pose pose) {
        return mark.face(scene.solid(mark.label()).orElseThrow(), pose);
    }
}
