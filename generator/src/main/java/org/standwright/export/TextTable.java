package org.standwright.export;

import java.util.ArrayList;
import java.util.List;

/** Rows whose columns line up when every letter is equally wide. Numbers stand to the right, words to the left. */
final class TextTable {
    private static final String BETWEEN = "  ";

    private final List<Align> columns;
    private final List<List<String>> rows = new ArrayList<>();

    enum Align {
        LEFT,
        RIGHT
    }

    TextTable(Align... columns) {
        this.columns = List.of(columns);
    }

    void add(String... cells) {
        rows.add(List.of(cells));
    }

    /** One text a row, no blanks at its end. */
    List<String> lines() {
        return rows.stream().map(this::line).toList();
    }

    private String line(List<String> cells) {
        var line = new StringBuilder();
        for (int column = 0; column < cells.size(); column++) {
            var cell = cells.get(column);
            var blanks = " ".repeat(width(column) - cell.length());
            line.append(column == 0 ? "" : BETWEEN);
            line.append(columns.get(column) == Align.LEFT ? cell + blanks : blanks + cell);
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
