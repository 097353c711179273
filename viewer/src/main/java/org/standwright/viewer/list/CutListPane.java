package org.standwright.viewer.list;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.BorderPane;
import org.standwright.cutlist.CutList;
import org.standwright.unit.Units;

/** The cut list. Its selected row and the part that is picked elsewhere follow each other. */
public final class CutListPane extends BorderPane {
    private final ObservableValue<Optional<CutList>> cutList;
    private final ObservableValue<Units> units;
    private final ObjectProperty<Optional<String>> picked;
    private final ListTable<CutRow> table = new ListTable<>("Cut list", columns(), "No cut list yet.");
    private final Details details = new Details("Select a row to read all its notes.");
    private boolean isFollowing;

    /** @param picked label of the part that all panes point at: 'left side' */
    public CutListPane(
            ObservableValue<Optional<CutList>> cutList,
            ObservableValue<Units> units,
            ObjectProperty<Optional<String>> picked) {
        this.cutList = cutList;
        this.units = units;
        this.picked = picked;
        getStyleClass().add("list-pane");
        getStylesheets().add(CutListPane.class.getResource("list.css").toExternalForm());
        setCenter(table);
        setBottom(details);
        cutList.subscribe(now -> fill());
        units.subscribe(now -> fill());
        picked.subscribe(now -> follow());
        table.getSelectionModel().selectedItemProperty().subscribe(this::selected);
    }

    private static Columns<CutRow> columns() {
        return new Columns<CutRow>()
                .words("Label", "Written on each piece", 5.5, CutRow::label)
                .words("Part", "What it is", 12, CutRow::part)
                .figures("Count", "How many", 5.5, CutRow::count)
                .figures("Length", "As it leaves the saw, along the grain", 6, CutRow::length)
                .figures("Width", "As it leaves the saw, across the grain", 6, CutRow::width)
                .figures("Thick", "Thickness as measured", 5.5, CutRow::thickness)
                .words("Material", "What it is cut from", 14, CutRow::material)
                .words("Edges", "Edges that are covered, and with what", 12, CutRow::edges)
                .words("Notes", "Machining; the selected row's are below in full", 40, CutRow::notes);
    }

    private void fill() {
        isFollowing = true;
        table.fill(cutList.getValue()
                .map(list -> CutRow.of(list, units.getValue()))
                .orElse(List.of()));
        isFollowing = false;
        follow();
    }

    /** Selects the row of the picked part. */
    private void follow() {
        var selection = table.getSelectionModel();
        var label = picked.get();
        var row = table.getItems().stream()
                .filter(each -> label.filter(each.line().members()::contains).isPresent())
                .findFirst();
        isFollowing = true;
        if (row.isEmpty()) {
            selection.clearSelection();
        } else if (!selection.getSelectedItems().contains(row.get())) {
            selection.clearAndSelect(table.getItems().indexOf(row.get()));
            table.scrollTo(row.get());
        }
        isFollowing = false;
        details();
    }

    private void selected(CutRow row) {
        details();
        if (!isFollowing
                && row != null
                && picked.get().filter(row.line().members()::contains).isEmpty()) {
            picked.set(Optional.of(row.line().members().get(0)));
        }
    }

    private void details() {
        details.show(Optional.ofNullable(table.getSelectionModel().getSelectedItem())
                .map(CutRow::details)
                .orElse(List.of()));
    }

    ListTable<CutRow> table() {
        return table;
    }
}
