package org.standwright.viewer.list;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.BorderPane;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.HardwareLine;

/** What to buy beside boards and bars, and what each is for. */
public final class HardwarePane extends BorderPane {
    private final ListTable<HardwareLine> table = new ListTable<>("Hardware", columns(), "No hardware.");
    private final Details details = new Details("Select a row to read all its uses.");

    public HardwarePane(ObservableValue<Optional<CutList>> cutList) {
        getStyleClass().add("list-pane");
        getStylesheets().add(HardwarePane.class.getResource("list.css").toExternalForm());
        setCenter(table);
        setBottom(details);
        cutList.subscribe(now -> table.fill(now.map(CutList::hardware).orElse(List.of())));
        table.getSelectionModel().selectedItemProperty().subscribe(line -> details.show(details(line)));
    }

    private static Columns<HardwareLine> columns() {
        return new Columns<HardwareLine>()
                .figures("Count", "How many to buy", 6, line -> Shown.of(line.count()))
                .words("Item", "What to buy", 30, line -> Shown.of(line.item()))
                .words("For", "What it is for", 50, line -> Shown.of(String.join("; ", line.uses())));
    }

    private static List<String> details(HardwareLine line) {
        return line == null ? List.of() : List.of(line.count() + " × " + line.item(), String.join("; ", line.uses()));
    }

    ListTable<HardwareLine> table() {
        return table;
    }
}
