package org.standwright.viewer.list;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.SortedList;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * A table that is sorted by its headings and copied as tab-separated text; it stays sorted when its rows change.
 *
 * @param <R> a row
 */
final class ListTable<R> extends TableView<R> {
    private static final KeyCombination COPY = new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN);

    /** Rows that are changed faster one by one than all together. */
    private static final int FEW = 3;

    private final ObservableList<R> rows = FXCollections.observableArrayList();
    private final SortedList<R> sorted = new SortedList<>(rows);

    ListTable(String name, Columns<R> columns, String whenEmpty) {
        setAccessibleText(name);
        getColumns().setAll(columns.all());
        sorted.comparatorProperty().bind(comparatorProperty());
        setItems(sorted);
        var placeholder = new Label(whenEmpty);
        placeholder.setWrapText(true);
        setPlaceholder(placeholder);
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (COPY.match(event)) {
                copy(selectedText());
                event.consume();
            }
        });
        setContextMenu(menu());
    }

    private ContextMenu menu() {
        // no accelerator: that would be the whole window's, and there are several tables
        var selected = new MenuItem("Copy selected rows (" + COPY.getDisplayText() + ")");
        selected.setOnAction(event -> copy(selectedText()));
        var all = new MenuItem("Copy the whole table with its headings");
        all.setOnAction(event -> copy(wholeText()));
        return new ContextMenu(selected, all);
    }

    /** Shows these rows instead; where few are others than before, only those change. */
    void fill(List<R> now) {
        var others = IntStream.range(0, Math.min(now.size(), rows.size()))
                .filter(i -> !now.get(i).equals(rows.get(i)))
                .boxed()
                .toList();
        if (now.size() != rows.size() || others.size() > FEW) {
            rows.setAll(now);
        } else {
            others.forEach(i -> rows.set(i, now.get(i)));
        }
    }

    /** The selected rows as they stand below each other. */
    String selectedText() {
        return TabbedText.of(getSelectionModel().getSelectedIndices().stream()
                .sorted()
                .map(this::cells)
                .toList());
    }

    /** All rows as they are sorted, the headings first. */
    String wholeText() {
        var headings = getVisibleLeafColumns().stream().map(Columns::title).toList();
        return TabbedText.of(Stream.concat(
                        Stream.of(headings),
                        IntStream.range(0, getItems().size()).mapToObj(this::cells))
                .collect(Collectors.toList()));
    }

    private List<String> cells(int row) {
        var cells = new ArrayList<String>();
        for (TableColumn<R, ?> column : getVisibleLeafColumns()) {
            cells.add(String.valueOf(column.getCellData(row)));
        }
        return cells;
    }

    private static void copy(String text) {
        if (!text.isEmpty()) {
            var content = new ClipboardContent();
            content.putString(text);
            Clipboard.getSystemClipboard().setContent(content);
        }
    }
}
