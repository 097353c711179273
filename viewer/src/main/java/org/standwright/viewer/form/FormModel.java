package org.standwright.viewer.form;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.standwright.file.form.Change;
import org.standwright.file.form.Choice;
import org.standwright.file.form.Form;
import org.standwright.file.form.Presets;
import org.standwright.file.form.Row;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;

/** The rows of a text, and what becomes of it when something is typed or chosen in them. */
public final class FormModel {
    private final Presets presets;
    private final Edits edits;
    private final ReadOnlyObjectWrapper<Optional<Row>> file = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper unreadable = new ReadOnlyStringWrapper("");
    private Marks marks;

    /**
     * @param presets that the file may name
     * @param edits gets each change as one step
     */
    public FormModel(Presets presets, Edits edits) {
        this.presets = presets;
        this.edits = edits;
    }

    /**
     * Shows a text. One that is no JSON leaves the rows as they are, and says why.
     *
     * @param problems of this text
     */
    public void show(String text, List<FileProblem> problems) {
        try {
            var rows = Form.of(text, presets);
            marks = Marks.of(rows, problems);
            unreadable.set("");
            file.set(Optional.of(rows));
        } catch (DesignFileException e) {
            unreadable.set(e.problems().get(0).message());
        }
    }

    /** The row of the whole file; empty until a text is shown. */
    public ReadOnlyObjectProperty<Optional<Row>> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** Why the text as it stands has no rows; empty when it has. */
    public ReadOnlyStringProperty unreadableProperty() {
        return unreadable.getReadOnlyProperty();
    }

    /** What is wrong with a row. */
    public List<String> problems(Row row) {
        return marks.at(row);
    }

    /** How many problems are in the rows inside. */
    public int problemsInside(Row row) {
        return marks.inside(row);
    }

    /** Whether nothing is wrong with a row and those inside. */
    boolean isFine(Row row) {
        return problems(row).isEmpty() && problemsInside(row) == 0;
    }

    /** Writes what was typed; nothing typed takes the field away. What stands there already is no change. */
    public void type(Row row, String typed) {
        if (typed.isBlank()) {
            clear(row);
        } else if (!row.written().equals(Optional.of(typed.strip()))) {
            set(row.set(row.jsonOf(typed)), "Change", row);
        }
    }

    /** Writes a choice. */
    public void choose(Row row, String json) {
        if (!row.json().equals(Optional.of(json))) {
            set(row.choose(json), "Change", row);
        }
    }

    /** Takes a field away, so that its standard value holds again. */
    public void clear(Row row) {
        if (row.isGiven()) {
            edits.remove(row.pointer(), Step.of(row.isEntry() || row.input().holdsRows() ? "Remove" : "Clear", row));
        }
    }

    /** Adds a group or list that is left out. */
    public void add(Row row) {
        set(row.add(), "Add", row);
    }

    /** Adds an entry at a list's end. */
    public void addEntry(Row list, Optional<Choice> member) {
        var entry = member.map(list::newEntry).orElseGet(list::newEntry);
        var what = "Add " + list.oneOf();
        if (list.isGiven()) {
            edits.insert(list.pointer(), list.rows().size(), entry, what);
        } else {
            var change = list.begin(entry);
            edits.set(change.pointer(), change.json(), what);
        }
    }

    /** Puts a copy of an entry behind it. */
    public void duplicate(Row entry) {
        edits.insert(
                listOf(entry).pointer(), entry.index() + 1, entry.json().orElseThrow(), Step.of("Duplicate", entry));
    }

    /** Moves an entry up (less than 0) or down, as far as its list goes. */
    public void move(Row entry, int by) {
        int to = entry.index() + by;
        if (to >= 0 && to < listOf(entry).rows().size()) {
            edits.move(listOf(entry).pointer(), entry.index(), to, Step.of("Move", entry) + (by < 0 ? " up" : " down"));
        }
    }

    /** Whether one entry more is allowed. */
    public static boolean hasRoom(Row list) {
        return list.rows().size() < list.mostEntries();
    }

    /** Whether an entry can be done without. */
    public static boolean canSpare(Row entry) {
        return listOf(entry).rows().size() > listOf(entry).fewest();
    }

    /** Writes the fields of the preset that is named in the place of its name. */
    public void writeOut(Row row) {
        row.writeOut().ifPresent(change -> set(change, "Write out", row));
    }

    private void set(Change change, String verb, Row row) {
        edits.set(change.pointer(), change.json(), Step.of(verb, row));
    }

    private static Row listOf(Row entry) {
        return entry.parent().orElseThrow();
    }
}
