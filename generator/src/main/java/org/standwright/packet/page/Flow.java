package org.standwright.packet.page;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Group;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Paper;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.figure.Figure;

/** Fills page after page with bands, from the top down. */
public final class Flow {
    private static final double GAP = 3;
    /** A paragraph of more lines may be divided by a page break. */
    private static final int LONG_PARAGRAPH = 8;
    /** A table that takes no more than this share of a page is not divided. */
    private static final double KEPT_WHOLE = 0.6;

    private final PageFrame upright;
    private final PageFrame sideways;
    private final TextMeasure measure;
    private final List<Page> pages = new ArrayList<>();
    /** Bands that stay on the page of the one that follows. */
    private final List<Band> held = new ArrayList<>();

    private PageFrame frame;
    private double y;

    private record Page(PageFrame frame, List<Shape> shapes) {}

    public Flow(Paper paper, TextMeasure measure) {
        this.upright = PageFrame.upright(paper);
        this.sideways = PageFrame.sideways(paper);
        this.measure = measure;
        this.frame = upright;
        newPage();
    }

    public TextMeasure measure() {
        return measure;
    }

    /** Between the margins, mm. */
    public double width() {
        return frame.width();
    }

    /** Between header and footer, mm. */
    public double height() {
        return frame.height();
    }

    /** What this page still holds, mm. */
    public double left() {
        return room() - total(held);
    }

    public PageFrame upright() {
        return upright;
    }

    public PageFrame sideways() {
        return sideways;
    }

    /** A new page with this frame unless there is an empty one. */
    public void freshPage(PageFrame turned) {
        frame = turned;
        if (isEmpty()) {
            pages.remove(pages.size() - 1);
        }
        newPage();
    }

    /** A new upright page unless there is an empty one. */
    public void freshPage() {
        freshPage(upright);
    }

    /** A new page like this one unless this one is still empty. */
    private void nextPage() {
        freshPage(frame);
    }

    private void newPage() {
        pages.add(new Page(frame, new ArrayList<>()));
        y = frame.top();
    }

    private boolean isEmpty() {
        return pages.get(pages.size() - 1).shapes().isEmpty();
    }

    public void title(String words) {
        lines(words, Letters.TITLE, Weight.BOLD).forEach(this::add);
        add(Band.gap(GAP));
    }

    /** A heading that is never the last line of a page. */
    public void heading(String words) {
        held.add(Band.gap(2 * GAP));
        held.addAll(lines(words, Letters.HEADING, Weight.BOLD));
        held.add(Band.gap(GAP / 2));
    }

    /** A paragraph that stays on the page of what follows. */
    public void lead(String words) {
        held.addAll(lines(words, Letters.BODY, Weight.REGULAR));
        held.add(Band.gap(GAP / 2));
    }

    public void paragraph(String words) {
        unbroken(lines(words, Letters.BODY, Weight.REGULAR)).forEach(this::add);
        add(Band.gap(GAP / 2));
    }

    /** A paragraph with a mark before it: '1.', or a box to tick. */
    public void item(Mark mark, String words) {
        var bands = lines(words, Letters.BODY, Weight.REGULAR, mark.indent());
        var first = bands.get(0);
        var marked = new ArrayList<>(first.shapes());
        marked.addAll(mark.shapes(first.height(), measure));
        var all = new ArrayList<>(bands);
        all.set(0, new Band(first.height(), marked));
        unbroken(all).forEach(this::add);
        add(Band.gap(GAP / 2));
    }

    public void figure(Figure figure) {
        add(Band.of(figure, width()));
        add(Band.gap(GAP));
    }

    /** Figures side by side, their upper edges in line. */
    public void figures(List<Figure> row) {
        add(Band.row(row, width()));
        add(Band.gap(GAP));
    }

    /** A table whose headings come back on every page that it reaches. */
    public void table(Table table) {
        var head = table.head(width(), measure);
        var rows = table.bands(width(), measure);
        held.add(head);
        double whole = total(held) + total(rows);
        if (whole > room() && whole <= KEPT_WHOLE * height()) {
            nextPage();
        }
        for (var row : rows) {
            if (held.isEmpty() && row.height() > room()) {
                newPage();
                held.add(head);
            }
            add(row);
        }
        add(Band.gap(GAP));
    }

    /** How much of a page a table takes where it is not divided, mm. */
    public double height(Table table) {
        return table.head(width(), measure).height() + total(table.bands(width(), measure)) + GAP;
    }

    public void add(Band band) {
        double needed = band.height() + held.stream().mapToDouble(Band::height).sum();
        if (needed > room()) {
            if (band.shapes().isEmpty()) {
                return; // white space at the foot of a page is there already
            }
            nextPage();
        }
        held.forEach(this::put);
        held.clear();
        put(band);
    }

    /** A short paragraph as one band; a long one may be divided between lines. */
    private static List<Band> unbroken(List<Band> lines) {
        if (lines.size() > LONG_PARAGRAPH) {
            return lines;
        }
        var shapes = new ArrayList<Shape>();
        double depth = 0;
        for (var line : lines) {
            shapes.add(new Group(new Point(0, -depth), line.shapes()));
            depth += line.height();
        }
        return List.of(new Band(depth, shapes));
    }

    private static double total(List<Band> bands) {
        return bands.stream().mapToDouble(Band::height).sum();
    }

    private double room() {
        return y - frame.bottom();
    }

    private void put(Band band) {
        if (y == frame.top() && band.shapes().isEmpty()) {
            return; // a page needs no white space above its first line
        }
        if (!band.shapes().isEmpty()) {
            pages.get(pages.size() - 1).shapes().add(new Group(new Point(frame.left(), y), band.shapes()));
        }
        y -= band.height();
    }

    private List<Band> lines(String words, double size, Weight weight) {
        return lines(words, size, weight, 0);
    }

    private List<Band> lines(String words, double size, Weight weight, double indent) {
        double height = measure.pitch(size);
        var baseline = new Point(indent, -height + measure.below(size) + 0.1);
        return measure.wrap(Times.sign(words), width() - indent, size, weight).stream()
                .map(line -> new Text(line, baseline, size, weight, Text.Anchor.START, Text.Heading.LEVEL))
                .map(text -> new Band(height, List.of(text)))
                .toList();
    }

    public List<Drawing> pages(String name, PageFrame.Foot foot) {
        var drawings = new ArrayList<Drawing>();
        for (int i = 0; i < pages.size(); i++) {
            var page = pages.get(i);
            drawings.add(page.frame().page(page.shapes(), foot, name, i + 1, pages.size(), measure));
        }
        return List.copyOf(drawings);
    }
}
