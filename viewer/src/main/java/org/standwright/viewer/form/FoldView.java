package org.standwright.viewer.form;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;
import org.standwright.file.form.Row;

/** A row that holds others and can be folded; what is inside is built when it is opened. */
abstract class FoldView extends RowView {
    private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

    private final Button head = new Button();
    private final FontIcon chevron = new FontIcon(Feather.CHEVRON_RIGHT);
    private final Label summary = new Label();
    private final Label count = new Label();
    private final HBox trailing = new HBox();
    private final HBox header = new HBox(head, summary, count, trailing);
    private final ProblemLine problem = new ProblemLine();
    private boolean isOpen;

    FoldView(Row row, Scope scope) {
        super(row, scope);
        head.setGraphic(chevron);
        head.getStyleClass().addAll("flat", "form-head");
        head.setMinWidth(Region.USE_PREF_SIZE);
        head.setOnAction(event -> setOpen(!isOpen));
        head.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        Hints.on(head, () -> row().description());
        summary.getStyleClass().add("form-summary");
        summary.setMaxWidth(Double.MAX_VALUE);
        summary.setMinWidth(0);
        summary.setOnMouseClicked(event -> setOpen(!isOpen));
        HBox.setHgrow(summary, Priority.ALWAYS);
        count.getStyleClass().add("form-count-problems");
        count.setMinWidth(Region.USE_PREF_SIZE);
        trailing.getStyleClass().add("form-trailing");
        header.setAlignment(Pos.CENTER_LEFT);
        header.getStyleClass().add("form-header");
        getStyleClass().add(isSection(row) ? "form-section" : "form-group");
        getChildren().addAll(header(), problem);
    }

    /** Opens it if it was open when it was last seen. */
    final void start() {
        refresh();
        if (scope().folds().isOpen(row().path())) {
            setOpen(true);
        }
    }

    /** The first line. */
    Region header() {
        return header;
    }

    final Button head() {
        return head;
    }

    /** What is inside, built once. */
    abstract Region body();

    /** Brings what is inside up to date. */
    abstract void refreshBody();

    final boolean isOpen() {
        return isOpen;
    }

    final void setOpen(boolean open) {
        if (open == isOpen) {
            return;
        }
        isOpen = open;
        scope().folds().set(row().path(), open);
        if (open) {
            refreshBody();
            body().getStyleClass().remove("form-body");
            body().getStyleClass().add("form-body");
            getChildren().add(body());
        } else {
            getChildren().remove(body());
        }
        refreshHead();
    }

    @Override
    void refresh() {
        refreshHead();
        if (isOpen) {
            refreshBody();
        }
    }

    private void refreshHead() {
        var row = row();
        head.setText(row.label());
        chevron.setIconCode(isOpen ? Feather.CHEVRON_DOWN : Feather.CHEVRON_RIGHT);
        head.pseudoClassStateChanged(OPEN, isOpen);
        head.setAccessibleText(row.label() + (isOpen ? ", open" : ", folded"));
        head.setAccessibleHelp(row.description());
        summary.setText(isOpen ? "" : summary(row));
        problem.show(scope().model().problems(row));
        count(isOpen ? 0 : scope().model().problemsInside(row));
    }

    private static String summary(Row row) {
        return row.isGiven() ? row.summary() : row.standard().isPresent() ? "as usual" : "left out";
    }

    private void count(int problems) {
        if (problems > 0 && count.getGraphic() == null) {
            count.setGraphic(new FontIcon(Feather.ALERT_CIRCLE));
        }
        count.setText(problems == 1 ? "1 problem" : problems + " problems");
        count.setVisible(problems > 0);
        count.setManaged(problems > 0);
    }

    private void key(KeyEvent event) {
        boolean opens = event.getCode() == KeyCode.RIGHT;
        if (opens || event.getCode() == KeyCode.LEFT) {
            setOpen(opens);
            event.consume();
        }
    }

    @Override
    void addTrailing(Node... controls) {
        trailing.getChildren().addAll(controls);
    }

    @Override
    final RowView reveal(String path) {
        if (path.equals(row().path())) {
            return this;
        }
        setOpen(true);
        return revealInside(path);
    }

    abstract RowView revealInside(String path);

    @Override
    void focus() {
        head.requestFocus();
    }
}
