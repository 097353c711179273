package org.standwright.viewer.list;

import java.util.List;
import java.util.stream.Collectors;

/** Rows for a spreadsheet: a line each, cells parted by tabs. */
final class TabbedText {
    private TabbedText() {}

    static String of(List<List<String>> rows) {
        return rows.stream()
                .map(row -> row.stream().map(TabbedText::cell).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
    }

    /** Nothing in a cell may look like the next one. */
    private static String cell(String words) {
        return words.replaceAll("\\s+", " ");
    }
}
