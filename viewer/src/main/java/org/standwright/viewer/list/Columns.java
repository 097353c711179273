package org.standwright.viewer.list;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.Tooltip;

/**
 * Columns of one table.
 *
 * @param <R> a row
 */
final class Columns<R> {
    private final List<TableColumn<R, Shown>> all = new ArrayList<>();

    /** Words, from the left. */
    Columns<R> words(String title, String meaning, double em, Function<R, Shown> cell) {
        return column(title, meaning, em, cell, "words");
    }

    /** Numbers, right-aligned. */
    Columns<R> figures(String title, String meaning, double em, Function<R, Shown> cell) {
        return column(title, meaning, em, cell, "figures");
    }

    private Columns<R> column(String title, String meaning, double em, Function<R, Shown> cell, String styleClass) {
        var column = new TableColumn<R, Shown>();
        var heading = new Label(title);
        heading.setTooltip(new Tooltip(meaning));
        column.setGraphic(heading);
        column.setUserData(title);
        column.getStyleClass().add(styleClass);
        column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(cell.apply(row.getValue())));
        // as wide as its letters want it, whatever their size
        heading.fontProperty().subscribe(font -> column.setPrefWidth(em * font.getSize()));
        all.add(column);
        return this;
    }

    List<TableColumn<R, Shown>> all() {
        return List.copyOf(all);
    }

    static String title(TableColumn<?, ?> column) {
        return String.valueOf(column.getUserData());
    }
}
