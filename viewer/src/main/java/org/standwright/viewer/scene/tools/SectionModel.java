package org.standwright.viewer.scene.tools;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.MapChangeListener;
import org.standwright.geom.Interval;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

/** Where the furniture is cut open, if it is. */
final class SectionModel {
    private final SceneModel scene;
    private final BooleanProperty on = new SimpleBooleanProperty(this, "on");
    private final ObjectProperty<Across> across = new SimpleObjectProperty<>(this, "across", Across.Y);
    private final ObjectProperty<Kept> kept = new SimpleObjectProperty<>(this, "kept", usual(Across.Y));
    private final DoubleProperty at = new SimpleDoubleProperty(this, "at");
    private final ReadOnlyObjectWrapper<Interval> range =
            new ReadOnlyObjectWrapper<>(this, "range", new Interval(0, 0));

    SectionModel(SceneModel scene) {
        this.scene = scene;
        scene.sceneryProperty().subscribe(shown -> measure());
        scene.explosionProperty().subscribe(factor -> measure());
        scene.open().addListener((MapChangeListener<String, Double>) change -> measure());
        across.subscribe(now -> {
            kept.set(usual(now));
            measure();
            at.set(range.get().middle());
        });
        on.subscribe(this::cut);
        kept.subscribe(this::cut);
        at.subscribe(this::cut);
    }

    /** What is seen first stays: from the usual point of view that is the back, the left and the lower side. */
    private static Kept usual(Across across) {
        return across == Across.Y ? Kept.HIGHER : Kept.LOWER;
    }

    BooleanProperty onProperty() {
        return on;
    }

    /** The axis along which the plane is moved; a change puts the plane into the middle. */
    ObjectProperty<Across> acrossProperty() {
        return across;
    }

    ObjectProperty<Kept> keptProperty() {
        return kept;
    }

    /** Place of the plane along its axis, mm. */
    DoubleProperty atProperty() {
        return at;
    }

    /** From one end of the furniture to the other along the axis, opened and drawn apart as it is to be, mm. */
    ReadOnlyObjectProperty<Interval> rangeProperty() {
        return range.getReadOnlyProperty();
    }

    void keepOtherSide() {
        kept.set(kept.get() == Kept.LOWER ? Kept.HIGHER : Kept.LOWER);
    }

    /** Moves the plane, as far as there is furniture; mm. */
    void move(double by) {
        at.set(within(at.get() + by));
    }

    private void measure() {
        boolean isNew = range.get().length() == 0;
        scene.pose().map(pose -> pose.box()).ifPresent(box -> {
            range.set(new Interval(across.get().of(box.min()), across.get().of(box.max())));
            at.set(isNew ? range.get().middle() : within(at.get()));
        });
    }

    private double within(double place) {
        return Math.max(range.get().from(), Math.min(range.get().to(), place));
    }

    private void cut() {
        scene.sectionProperty()
                .set(on.get() ? Optional.of(new SectionPlane(across.get(), at.get(), kept.get())) : Optional.empty());
    }
}
