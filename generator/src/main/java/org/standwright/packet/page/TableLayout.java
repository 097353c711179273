package org.standwright.packet.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;
import org.standwright.packet.page.Table.Column;

/** Widths of a table's columns and the bands of its rows. */
final class TableLayout {
    private static final double SIZE = Letters.TABLE;
    private static final double PAD = 1.2;
    /** Narrowest column that is still read with ease, mm. */
    private static final double NARROWEST = 14;

    /** Rows of more lines are divided so that they cannot outgrow a page. */
    private static final int MOST_LINES = 40;

    private final Table table;
    private final double width;
    private final TextMeasure measure;
    private final List<Double> widths;

    TableLayout(Table table, double width, TextMeasure measure) {
        this.table = table;
        this.width = width;
        this.measure = measure;
        this.widths = widths();
    }

    Band head() {
        var words = table.columns().stream().map(Column::heading).toList();
        var band = band(lines(words, Weight.BOLD), Weight.BOLD, Optional.of(Pen.OUTLINE));
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.area(new Rect(0, -band.height(), width, 0), Fill.LIGHT));
        shapes.addAll(band.shapes());
        return new Band(band.height(), shapes);
    }

    /** One band a row; a row of very many lines goes on in further bands. */
    List<Band> rows() {
        var bands = new ArrayList<Band>();
        for (var row : table.rows()) {
            var lines = lines(row, Weight.REGULAR);
            int most = lines.stream().mapToInt(List::size).max().orElse(0);
            for (int from = 0; from < Math.max(1, most); from += MOST_LINES) {
                boolean last = from + MOST_LINES >= most;
                bands.add(band(part(lines, from), Weight.REGULAR, last ? Optional.of(Pen.THIN) : Optional.empty()));
            }
        }
        return bands;
    }

    private static List<List<String>> part(List<List<String>> lines, int from) {
        return lines.stream()
                .map(cell -> cell.subList(Math.min(from, cell.size()), Math.min(from + MOST_LINES, cell.size())))
                .toList();
    }

    private List<List<String>> lines(List<String> cells, Weight weight) {
        return IntStream.range(0, cells.size())
                .mapToObj(i -> lines(cells.get(i), widths.get(i) - 2 * PAD, weight))
                .toList();
    }

    private Band band(List<List<String>> lines, Weight weight, Optional<Pen> rule) {
        int most = lines.stream().mapToInt(List::size).max().orElse(1);
        double height = most * measure.pitch(SIZE) + PAD;
        var shapes = new ArrayList<Shape>();
        double x = 0;
        for (int i = 0; i < lines.size(); i++) {
            place(lines.get(i), i, x, weight, shapes);
            x += widths.get(i);
        }
        rule.ifPresent(pen -> shapes.add(Line.between(0, -height, width, -height, pen)));
        return new Band(height, shapes);
    }

    private void place(List<String> lines, int column, double x, Weight weight, List<Shape> shapes) {
        var kind = table.columns().get(column).kind();
        if (kind == Column.Kind.TICK && weight == Weight.REGULAR && !lines.isEmpty()) {
            shapes.add(Mark.box(x + PAD, -PAD / 2 - measure.pitch(SIZE) + measure.below(SIZE)));
            return;
        }
        if (kind == Column.Kind.BAR && weight == Weight.REGULAR && !lines.isEmpty()) {
            double lower = -PAD / 2 - measure.pitch(SIZE) + measure.below(SIZE);
            shapes.addAll(ShareBar.shapes(Double.parseDouble(lines.get(0)), x + PAD, lower));
            return;
        }
        boolean right = kind == Column.Kind.FIGURES;
        double at = right ? x + widths.get(column) - PAD : x + PAD;
        double y = -PAD / 2 - measure.pitch(SIZE) + measure.below(SIZE) + 0.2;
        for (var line : lines) {
            var anchor = right ? Text.Anchor.END : Text.Anchor.START;
            shapes.add(new Text(line, new Point(at, y), SIZE, weight, anchor, Text.Heading.LEVEL));
            y -= measure.pitch(SIZE);
        }
    }

    private List<String> lines(String words, double room, Weight weight) {
        return Times.sign(words)
                .lines()
                .flatMap(line -> measure.wrap(line, room, SIZE, weight).stream())
                .toList();
    }

    /** Natural widths where they fit; prose shares the rest; when that is too little, every column gives way. */
    private List<Double> widths() {
        var natural = IntStream.range(0, table.columns().size())
                .mapToObj(this::natural)
                .toList();
        double total = sum(natural);
        if (total <= width) {
            return stretched(natural, width - total);
        }
        var prose = IntStream.range(0, natural.size())
                .filter(this::isProse)
                .boxed()
                .sorted(Comparator.comparing(natural::get))
                .toList();
        double left = width - total + prose.stream().mapToDouble(natural::get).sum();
        if (left < Math.max(1, prose.size()) * NARROWEST) {
            return natural.stream().map(w -> w * width / total).toList();
        }
        var widths = new ArrayList<>(natural);
        for (int i = 0; i < prose.size(); i++) {
            // the narrowest first: what it does not need goes to the wider ones
            double wide = Math.min(natural.get(prose.get(i)), left / (prose.size() - i));
            widths.set(prose.get(i), wide);
            left -= wide;
        }
        return List.copyOf(widths);
    }

    /** Room that is left over goes to the last prose column, or evenly to all. */
    private List<Double> stretched(List<Double> natural, double extra) {
        int last =
                IntStream.range(0, natural.size()).filter(this::isProse).max().orElse(-1);
        return IntStream.range(0, natural.size())
                .mapToObj(i -> natural.get(i) + (last < 0 ? extra / natural.size() : i == last ? extra : 0))
                .toList();
    }

    private boolean isProse(int column) {
        return table.columns().get(column).kind() == Column.Kind.PROSE;
    }

    private double natural(int column) {
        if (table.columns().get(column).kind() == Column.Kind.BAR) {
            return ShareBar.WIDTH + 2 * PAD;
        }
        double cells = table.rows().stream()
                .flatMap(row -> row.get(column).lines())
                .mapToDouble(line -> measure.width(line, SIZE, Weight.REGULAR))
                .max()
                .orElse(0);
        // a heading may wrap between words, but no word of it is broken
        double heading = List.of(table.columns().get(column).heading().split(" ")).stream()
                .mapToDouble(word -> measure.width(word, SIZE, Weight.BOLD))
                .max()
                .orElse(0);
        return Math.max(cells, heading) + 2 * PAD + 0.01;
    }

    private static double sum(List<Double> widths) {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }
}
