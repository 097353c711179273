package org.standwright.viewer.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.standwright.make.SheetPaper;
import org.standwright.unit.Units;
import org.standwright.viewer.paper.DrawingView;
import org.standwright.viewer.paper.Later;
import org.standwright.viewer.paper.Working;
import org.standwright.viewer.work.Job;

/** Every sheet of the plan: what lies on it, what becomes of it, and its cuts one after the other. */
public final class SheetsPane extends BorderPane {
    private final SheetsModel model;
    private final Marks marks;
    private final DrawingView view = new DrawingView();
    private final ListView<SheetPaper> sheets = new ListView<>();
    private final ListView<LaidPart> parts = new ListView<>();
    private final Label words = new Label();
    private boolean isFollowing;

    /**
     * @param job whose sheets are shown; they are drawn away from the screen's thread
     * @param planning whether a better plan is being looked for
     * @param picked label of the part that all panes point at
     */
    public SheetsPane(
            ObservableValue<Optional<Job>> job,
            ObservableValue<Boolean> planning,
            ObjectProperty<Optional<String>> picked) {
        this.model = new SheetsModel(Later.of(job, DrawnPlan::of).result(), picked);
        this.marks = new Marks(model);
        view.over().addAll(marks.nodes());
        getStyleClass().add("sheets-pane");
        getStylesheets().add(SheetsPane.class.getResource("sheet.css").toExternalForm());
        setTop(heading(planning));
        setLeft(lists());
        setCenter(view);
        setBottom(new CutBar(model));
        view.onClicked(model::pick);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        model.planProperty().subscribe(this::fill);
        model.paperProperty().subscribe(this::look);
        model.doneProperty().subscribe(marks::update);
        picked.subscribe(this::mark);
    }

    private Node heading(ObservableValue<Boolean> planning) {
        words.getStyleClass().add("plan-words");
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        var heading = new VBox(words, Working.of(planning, "Looking for a better plan …"));
        heading.getStyleClass().add("heading");
        return heading;
    }

    private Node lists() {
        sheets.setAccessibleText("Sheets");
        sheets.getStyleClass().add("sheets");
        sheets.setCellFactory(list -> new WordsCell<>(paper -> PlanWords.board(paper, units())));
        sheets.getSelectionModel().selectedIndexProperty().subscribe(chosen -> {
            if (!isFollowing && chosen.intValue() >= 0) {
                model.look(chosen.intValue());
            }
        });
        parts.setAccessibleText("Pieces of this sheet");
        parts.getStyleClass().add("parts");
        parts.setCellFactory(list -> new WordsCell<>(laid -> laid.words(units())));
        parts.getSelectionModel().selectedItemProperty().subscribe(chosen -> {
            if (!isFollowing && chosen != null) {
                model.pickedProperty().set(Optional.of(chosen.part()));
            }
        });
        VBox.setVgrow(parts, Priority.ALWAYS);
        var lists = new VBox(sheets, new Label("Pieces of this sheet"), parts);
        lists.getStyleClass().add("lists");
        return lists;
    }

    /** One line of words. */
    private static final class WordsCell<T> extends ListCell<T> {
        private final Function<T, String> say;

        WordsCell(Function<T, String> say) {
            this.say = say;
        }

        @Override
        protected void updateItem(T item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty || item == null ? "" : say.apply(item));
        }
    }

    private Units units() {
        return model.planProperty().getValue().map(DrawnPlan::units).orElse(Units.MM);
    }

    private void fill() {
        isFollowing = true;
        sheets.getItems()
                .setAll(model.planProperty().getValue().map(DrawnPlan::papers).orElse(List.of()));
        isFollowing = false;
        look();
    }

    private void look() {
        isFollowing = true;
        sheets.getSelectionModel().clearAndSelect(model.paperProperty().get());
        parts.getItems().setAll(model.parts());
        isFollowing = false;
        words.setText(model.sheet()
                .map(paper -> PlanWords.of(
                        paper.material(),
                        model.planProperty().getValue().orElseThrow().job().plan(),
                        units()))
                .orElse("No sheets to cut."));
        view.drawingProperty().set(model.sheet().map(SheetPaper::drawing));
        mark();
    }

    private void mark() {
        isFollowing = true;
        model.marked()
                .ifPresentOrElse(
                        laid -> {
                            parts.getSelectionModel().select(laid);
                            parts.scrollTo(laid);
                        },
                        () -> parts.getSelectionModel().clearSelection());
        isFollowing = false;
        marks.update();
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case PAGE_UP -> model.look(model.paperProperty().get() - 1);
            case PAGE_DOWN -> model.look(model.paperProperty().get() + 1);
            default -> {
                if (!event.isAltDown() || !step(event)) {
                    return;
                }
            }
        }
        event.consume();
    }

    private boolean step(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> model.previousCut();
            case RIGHT -> model.nextCut();
            case HOME -> model.firstCut();
            case END -> model.lastCut();
            default -> {
                return false;
            }
        }
        return true;
    }

    SheetsModel model() {
        return model;
    }

    DrawingView view() {
        return view;
    }
}
