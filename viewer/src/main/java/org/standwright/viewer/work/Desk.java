package org.standwright.viewer.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.FileProblem;
import org.standwright.make.Built;
import org.standwright.make.Product;
import org.standwright.unit.Units;
import org.standwright.viewer.document.Document;
import org.standwright.viewer.document.History;

/**
 * The model of the window: one design file being worked on, what was made of it, and the part that was picked.
 *
 * <p>Every method is called on the screen's thread, and properties change there. An edit changes the text at once; what is
 * made of it follows in stages: {@link #builtProperty()} within a frame or two, then findings, plan and product. While a
 * text is wrong, the last good design stays in them and {@link #problemsProperty()} says why.
 */
public final class Desk {
    private final Live live;
    private final Optional<Path> presetsFolder;
    /** Keeps what it has read, for as long as the file lies in the same folder. */
    private PresetLibrary presets;

    private final ReadOnlyObjectWrapper<History> history;
    private final ReadOnlyObjectWrapper<Document> document;
    private final ReadOnlyObjectWrapper<Optional<Path>> file =
            new ReadOnlyObjectWrapper<>(this, "file", Optional.empty());
    private final StringProperty saved = new SimpleStringProperty(this, "saved", "");
    private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper(this, "changed");

    private final ReadOnlyObjectWrapper<List<FileProblem>> problems =
            new ReadOnlyObjectWrapper<>(this, "problems", List.of());
    private final ReadOnlyObjectWrapper<Settled> settled;
    private final ReadOnlyObjectWrapper<Optional<Built>> built =
            new ReadOnlyObjectWrapper<>(this, "built", Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<CutList>> cutList =
            new ReadOnlyObjectWrapper<>(this, "cutList", Optional.empty());
    private final ReadOnlyObjectWrapper<List<Finding>> findings =
            new ReadOnlyObjectWrapper<>(this, "findings", List.of());
    private final ReadOnlyObjectWrapper<Optional<Job>> job = new ReadOnlyObjectWrapper<>(this, "job", Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Product>> product =
            new ReadOnlyObjectWrapper<>(this, "product", Optional.empty());
    private final ReadOnlyObjectWrapper<Stage> stage = new ReadOnlyObjectWrapper<>(this, "stage", Stage.BUILDING);

    private final ObjectProperty<Optional<String>> picked =
            new SimpleObjectProperty<>(this, "picked", Optional.empty());
    private final ObjectProperty<Optional<Units>> units = new SimpleObjectProperty<>(this, "units", Optional.empty());

    /**
     * @param presetsFolder of the maker's own presets
     * @param first what lies on the desk in the beginning
     * @param failed hears of faults of the program itself
     */
    public Desk(Threads threads, Optional<Path> presetsFolder, Opened first, Consumer<Throwable> failed) {
        this.live = new Live(threads, new Shown(), failed);
        this.presetsFolder = presetsFolder;
        this.presets = presetsBeside(first.file());
        this.history = new ReadOnlyObjectWrapper<>(this, "history", History.of(new Document("", "")));
        this.document =
                new ReadOnlyObjectWrapper<>(this, "document", history.get().present());
        settled = new ReadOnlyObjectWrapper<>(this, "settled", new Settled(document.get(), List.of()));
        changed.bind(Bindings.createBooleanBinding(() -> !document.get().text().equals(saved.get()), document, saved));
        units.addListener((property, before, now) -> work(document.get()));
        lay(first);
    }

    /** Starts with another text; its history begins here. */
    public void lay(Opened opened) {
        presets = presetsBeside(opened.file());
        file.set(opened.file());
        saved.set(opened.saved());
        clear();
        picked.set(Optional.empty());
        go(History.of(new Document(opened.what(), opened.text())));
    }

    /** What was made of another file shall not be taken for this one's. */
    private void clear() {
        built.set(Optional.empty());
        cutList.set(Optional.empty());
        job.set(Optional.empty());
        findings.set(List.of());
        product.set(Optional.empty());
    }

    /** Makes an edit a state of its own; does nothing where the text stays as it is. */
    public void edit(String what, String text) {
        var present = history.get().present();
        present.edited(what, text).ifPresentOrElse(next -> go(history.get().with(next)), this::drop);
    }

    /** Shows what an edit would do, such as while something is dragged; {@link #edit} or {@link #drop} ends it. */
    public void preview(String text) {
        show(new Document("", text));
    }

    /** Goes back from a preview to the present state. */
    public void drop() {
        if (document.get() != history.get().present()) {
            show(history.get().present());
        }
    }

    /**
     * Makes a change of the design an edit of its text, away from the screen's thread.
     *
     * @param change the design, in the units of its file, to another one
     * @param refused gets the reason where the change cannot be written
     */
    public void change(String what, UnaryOperator<Design> change, Consumer<String> refused) {
        var from = document.get();
        var name = name();
        var library = presets;
        live.write(
                () -> from.changed(name, library, change),
                text -> {
                    if (document.get() == from) {
                        edit(what, text);
                    } else {
                        refused.accept("The design has changed since.");
                    }
                },
                refused);
    }

    public void undo() {
        go(history.get().undone());
    }

    public void redo() {
        go(history.get().redone());
    }

    /** Notes that the present text now stands in a file. */
    public void saved(Path as) {
        presets = presetsBeside(Optional.of(as));
        file.set(Optional.of(as));
        saved.set(history.get().present().text());
    }

    private void go(History next) {
        history.set(next);
        show(next.present());
    }

    private void show(Document next) {
        if (document.get() != next) {
            document.set(next);
            work(next);
        }
    }

    private void work(Document on) {
        stage.set(Stage.BUILDING);
        live.begin(new Request(on, name(), presets, units.get()));
    }

    /** Whatever follows the text looks at it now: what became of it is known. */
    private void settle(List<FileProblem> found) {
        problems.set(found);
        settled.set(new Settled(document.get(), found));
    }

    /** The text as it stands in its file, or as it was laid here. */
    public String savedText() {
        return saved.get();
    }

    /** What messages call the text. */
    public String name() {
        return file.get().map(path -> path.getFileName().toString()).orElse("this design");
    }

    /** Where presets are looked up for it. */
    public PresetLibrary presets() {
        return presets;
    }

    private PresetLibrary presetsBeside(Optional<Path> path) {
        var folder = path.map(at -> at.toAbsolutePath().getParent()).orElse(Path.of(""));
        return PresetLibrary.of(folder, presetsFolder);
    }

    private final class Shown implements Answers {
        @Override
        public void refused(List<FileProblem> reasons) {
            settle(reasons);
            stage.set(Stage.REFUSED);
        }

        @Override
        public void shown(Built next) {
            built.set(Optional.of(next));
            stage.set(Stage.CHECKING);
            settle(List.of());
        }

        @Override
        public void listed(CutList list) {
            cutList.set(Optional.of(list));
        }

        @Override
        public void judged(List<Finding> found, boolean withCures) {
            findings.set(found);
            stage.set(withCures ? Stage.PLANNING : Stage.CURING);
        }

        @Override
        public void planned(Job next, boolean isFinal) {
            job.set(Optional.of(next));
        }

        @Override
        public void unplanned(FileProblem problem) {
            job.set(Optional.empty());
            settle(List.of(problem));
            stage.set(Stage.REFUSED);
        }

        @Override
        public void finished(Product all) {
            product.set(Optional.of(all));
            stage.set(Stage.DONE);
        }
    }

    /** The text as it stands, good or not; that of a preview while there is one. */
    public ReadOnlyObjectProperty<Document> documentProperty() {
        return document.getReadOnlyProperty();
    }

    /** The newest text of which it is known whether it is good; a frame or two behind the document. */
    public ReadOnlyObjectProperty<Settled> settledProperty() {
        return settled.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<History> historyProperty() {
        return history.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** Whether there is something to save. */
    public ReadOnlyBooleanProperty changedProperty() {
        return changed.getReadOnlyProperty();
    }

    /** What is wrong with the text as it stands. */
    public ReadOnlyObjectProperty<List<FileProblem>> problemsProperty() {
        return problems.getReadOnlyProperty();
    }

    /** The last good design with its boards; empty until there was one. */
    public ReadOnlyObjectProperty<Optional<Built>> builtProperty() {
        return built.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<CutList>> cutListProperty() {
        return cutList.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<Finding>> findingsProperty() {
        return findings.getReadOnlyProperty();
    }

    /** The sheets of the last good design that could be planned; they get better while {@link Stage#PLANNING}. */
    public ReadOnlyObjectProperty<Optional<Job>> jobProperty() {
        return job.getReadOnlyProperty();
    }

    /** All that files are made from: of the text as it stands when the stage is {@link Stage#DONE}, else of an older one. */
    public ReadOnlyObjectProperty<Optional<Product>> productProperty() {
        return product.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Stage> stageProperty() {
        return stage.getReadOnlyProperty();
    }

    /** Label of the part that is picked, for all panes. */
    public ObjectProperty<Optional<String>> pickedProperty() {
        return picked;
    }

    /** Units to read back other than the design's own. */
    public ObjectProperty<Optional<Units>> unitsProperty() {
        return units;
    }

    /** Units of what is shown. */
    public ObservableValue<Units> shownUnits() {
        return built.map(shown -> shown.map(Built::units).orElse(Units.MM));
    }
}
