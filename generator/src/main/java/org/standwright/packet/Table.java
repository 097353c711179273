package org.standwright.packet;

import java.util.List;
import org.standwright.drawing.TextMeasure;

/** Cells in rows under headings; a cell's words are wrapped to the width of its column. */
record Table(List<Column> columns, List<List<String>> rows) {
    Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (var row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "row " + row + " has " + row.size() + " cells for " + columns.size() + " columns.");
            }
        }
    }

    /** A column, and where its words stand. */
    record Column(String heading, Kind kind) {
        enum Kind {
            /** Figures, on the right, never wrapped while there is room. */
            FIGURES,
            /** Short words, on the left, never wrapped while there is room. */
            WORDS,
            /** Sentences, on the left, that take the room that is left. */
            PROSE
        }

        static Column figures(String heading) {
            return new Column(heading, Kind.FIGURES);
        }

        static Column words(String heading) {
            return new Column(heading, Kind.WORDS);
        }

        static Column prose(String heading) {
            return new Column(heading, Kind.PROSE);
        }
    }

    /** The headings as a band, to be repeated on every page. */
    Band head(double width, TextMeasure measure) {
        return new TableLayout(this, width, measure).head();
    }

    /** Each row as a band. */
    List<Band> bands(double width, TextMeasure measure) {
        return new TableLayout(this, width, measure).rows();
    }
}
