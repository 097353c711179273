package org.standwright.viewer.scene;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableMap;
import javafx.collections.ObservableSet;
import org.standwright.assembly.Pose;
import org.standwright.solid.PlacedSolid;
import org.standwright.viewer.scene.section.SectionPlane;

/** What the 3D view shows, and how; it knows no node. */
public final class SceneModel {
    private final Viewpoint viewpoint = new Viewpoint();
    private final ReadOnlyObjectWrapper<Optional<Scenery>> scenery =
            new ReadOnlyObjectWrapper<>(this, "scenery", Optional.empty());
    private final ReadOnlyObjectWrapper<List<Step>> steps = new ReadOnlyObjectWrapper<>(this, "steps", List.of());
    private final IntegerProperty step = new SimpleIntegerProperty(this, "step");
    private final DoubleProperty explosion = new SimpleDoubleProperty(this, "explosion");
    private final ObservableMap<String, Double> open = FXCollections.observableMap(new TreeMap<>());
    private final ObservableSet<String> hidden = FXCollections.observableSet();
    private final ObservableSet<String> isolated = FXCollections.observableSet();
    private final BooleanProperty seeThrough = new SimpleBooleanProperty(this, "seeThrough");
    private final BooleanProperty edges = new SimpleBooleanProperty(this, "edges", true);
    private final ObjectProperty<Optional<SectionPlane>> section =
            new SimpleObjectProperty<>(this, "section", Optional.empty());
    private final ObjectProperty<Optional<String>> picked =
            new SimpleObjectProperty<>(this, "picked", Optional.empty());

    /** Shows something else; what was open, hidden and so on stays so as far as it is still there. */
    public void show(Scenery shown) {
        boolean finished = step.get() == steps.get().size();
        steps.set(Steps.of(shown.assembly()));
        step.set(
                finished ? steps.get().size() : Math.min(step.get(), steps.get().size()));
        open.keySet().retainAll(shown.moving());
        hidden.retainAll(shown.labels());
        isolated.retainAll(shown.labels());
        scenery.set(Optional.of(shown));
        if (viewpoint.isUntouched()) {
            fit();
        }
    }

    public ReadOnlyObjectProperty<Optional<Scenery>> sceneryProperty() {
        return scenery.getReadOnlyProperty();
    }

    public Viewpoint viewpoint() {
        return viewpoint;
    }

    /** How far things are drawn apart, 0 for together to 1 for twice as far out. */
    public DoubleProperty explosionProperty() {
        return explosion;
    }

    /** How far each group that moves is to be open, 0 to 1; those not named are closed. The view slides them there. */
    public ObservableMap<String, Double> open() {
        return open;
    }

    /** The steps of putting it together. */
    public ReadOnlyObjectProperty<List<Step>> stepsProperty() {
        return steps.getReadOnlyProperty();
    }

    /** How many of the steps are done; all of them for the finished furniture. */
    public IntegerProperty stepProperty() {
        return step;
    }

    /** Labels of what is not shown. */
    public ObservableSet<String> hidden() {
        return hidden;
    }

    /** Labels of all that is shown, or empty for everything. */
    public ObservableSet<String> isolated() {
        return isolated;
    }

    /** Whether all but the picked part is like glass. */
    public BooleanProperty seeThroughProperty() {
        return seeThrough;
    }

    public BooleanProperty edgesProperty() {
        return edges;
    }

    /** Where everything is cut open. */
    public ObjectProperty<Optional<SectionPlane>> sectionProperty() {
        return section;
    }

    /** Label of the part that is pointed out. */
    public ObjectProperty<Optional<String>> pickedProperty() {
        return picked;
    }

    public void hidePicked() {
        picked.get().ifPresent(label -> {
            hidden.add(label);
            picked.set(Optional.empty());
        });
    }

    public void isolatePicked() {
        picked.get().ifPresent(label -> {
            isolated.clear();
            isolated.add(label);
        });
    }

    public void showAll() {
        hidden.clear();
        isolated.clear();
    }

    /** Opens what the part moves with, or closes it; parts that stay put do nothing. */
    public void slide(String label) {
        scenery.get()
                .flatMap(shown -> shown.movingWith(label))
                .ifPresent(group -> open.put(group, open.getOrDefault(group, 0.0) > 0 ? 0.0 : 1.0));
    }

    /** Whether the part can be slid. */
    public boolean slides(String label) {
        return scenery.get().flatMap(shown -> shown.movingWith(label)).isPresent();
    }

    public void openAll() {
        scenery.get()
                .ifPresent(shown ->
                        open.putAll(shown.moving().stream().collect(Collectors.toMap(group -> group, group -> 1.0))));
    }

    public void closeAll() {
        open.clear();
    }

    /** Whether anything is to be open. */
    public boolean isOpen() {
        return open.values().stream().anyMatch(share -> share > 0);
    }

    /** Goes on by some steps, or back, as far as there are any. */
    public void stepBy(int steps) {
        int last = this.steps.get().size();
        step.set(Math.max(Math.min(1, last), Math.min(last, step.get() + steps)));
    }

    /** Steps back, or comes closer, until everything is just seen, opened and drawn apart as it is to be. */
    public void fit() {
        pose().ifPresent(pose -> viewpoint.fit(pose.box()));
    }

    /** Looks at everything from a standard direction. */
    public void seeFrom(StandardView view) {
        pose().ifPresent(pose -> viewpoint.seeFrom(view, pose.box()));
    }

    /** Whether a thing is in the picture at all. */
    boolean isSeen(String label) {
        return !hidden.contains(label)
                && (isolated.isEmpty() || isolated.contains(label))
                && (step.get() >= steps.get().size() || seenByNow().contains(label));
    }

    /** Whether a thing is like glass. */
    boolean isGlass(String label) {
        return seeThrough.get() && !picked.get().equals(Optional.of(label));
    }

    /** The board of a label; nothing where that is no board. */
    public Optional<PlacedSolid> solid(String label) {
        return scenery.get().flatMap(shown -> shown.solid(label));
    }

    /** Everything opened and drawn apart as it is to be. */
    public Optional<Pose> pose() {
        return scenery.get().map(shown -> pose(shown, open));
    }

    /** @param shares how far each group is open */
    Pose pose(Scenery shown, Map<String, Double> shares) {
        var closed = Pose.closed(shown.assembly());
        return new Pose(closed.assembly(), shares, explosion.get(), closed.centre());
    }

    private Set<String> seenByNow() {
        return step.get() <= 0 ? Set.of() : steps.get().get(step.get() - 1).seen();
    }
}
