package org.standwright.packet.page;

import java.util.List;
import java.util.Locale;
import org.standwright.drawing.TextMeasure;

/** Cells in rows under headings; a cell's words are wrapped to the width of its column. */
public record Table(List<Column> columns, List<List<String>> rows) {
    public Table {
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
    public record Column(String heading, Kind kind) {
        /** No bar is longer. */
        private static final double MOST_SHARE = 9;

        public enum Kind {
            /** Figures, on the right, never wrapped while there is room. */
            FIGURES,
            /** Short words, on the left, never wrapped while there is room. */
            WORDS,
            /** Sentences, on the left, that take the room that is left. */
            PROSE,
            /** A box to tick in each cell that is not empty. */
            TICK,
            /** A share, drawn as a bar. */
            BAR
        }

        public static Column figures(String heading) {
            return new Column(heading, Kind.FIGURES);
        }

        public static Column words(String heading) {
            return new Column(heading, Kind.WORDS);
        }

        public static Column tick(String heading) {
            return new Column(heading, Kind.TICK);
        }

        public static Column bar(String heading) {
            return new Column(heading, Kind.BAR);
        }

        /** What stands in a cell of such a column. */
        public static String share(double share) {
            return String.format(Locale.ROOT, "%.3f", Math.min(share, MOST_SHARE));
        }

        public static Column prose(String heading) {
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
