package org.standwright.viewer.form;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.standwright.file.form.Row;
import org.standwright.file.text.Pointer;

/**
 * All fields of a design file in a column that scrolls: first what the file says of itself, then a section for each group
 * and list.
 */
public final class FormPane extends VBox {
    private static final Set<String> OPEN_AT_FIRST =
            Set.of("", "/machine", "/workingHeight", "/bays", "/walls", "/holders");

    /** A revealed field lies so far down, as a share of what is seen. */
    private static final double ROOM_ABOVE = 0.25;

    private final FormModel model;
    private final Folds folds = new Folds();
    private final ProblemLine loose = new ProblemLine();
    private final ProblemLine unreadable = new ProblemLine();
    private final RowsBox general;
    private final RowsBox sections;
    private final VBox column = new VBox();
    private final ScrollPane scroll = new ScrollPane(column);

    /** @param model of the file; whoever shows it a text shows it here, too */
    public FormPane(FormModel model) {
        this.model = model;
        OPEN_AT_FIRST.forEach(path -> folds.set(path, true));
        var scope = new Scope(model, folds);
        general = new RowsBox(scope, "/…", "more settings");
        general.getStyleClass().add("form-general");
        sections = new RowsBox(scope, "", "more sections");
        sections.getStyleClass().add("form-sections");
        column.getStyleClass().add("form-column");
        column.getChildren().addAll(general, sections);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("form-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getStyleClass().add("form-pane");
        getStylesheets()
                .add(Objects.requireNonNull(FormPane.class.getResource("form.css"))
                        .toExternalForm());
        getChildren().addAll(unreadable, loose, scroll);
        model.unreadableProperty().subscribe(this::showReadable);
        model.fileProperty().subscribe(file -> file.ifPresent(this::show));
    }

    private void showReadable(String why) {
        unreadable.show(why.isEmpty() ? List.of() : List.of("The text has to be put right first: " + why));
        scroll.setDisable(!why.isEmpty());
    }

    private void show(Row file) {
        loose.show(model.problems(file));
        general.update(
                file.rows().stream().filter(row -> !row.input().holdsRows()).toList());
        sections.update(
                file.rows().stream().filter(row -> row.input().holdsRows()).toList());
    }

    /** Opens the way to a field, shows it and puts the focus on it. */
    public void reveal(String pointer) {
        model.fileProperty().get().ifPresent(file -> {
            var path = Marks.nearest(file, Pointer.readable(pointer)).path();
            general.reveal(path).or(() -> sections.reveal(path)).ifPresent(this::bringInView);
        });
    }

    /** Paths of what is open, to be remembered. */
    public Set<String> open() {
        return folds.open();
    }

    private void bringInView(RowView view) {
        view.focus();
        applyCss();
        layout();
        var at = column.sceneToLocal(view.localToScene(view.getBoundsInLocal()));
        double hidden = column.getHeight() - scroll.getViewportBounds().getHeight();
        if (hidden > 0) {
            double top = at.getMinY() - ROOM_ABOVE * scroll.getViewportBounds().getHeight();
            scroll.setVvalue(Math.max(0, Math.min(1, top / hidden)));
        }
    }
}
