package org.standwright.packet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Paper;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.unit.Units;

/** Margins, header and footer of one page, mm. */
public record PageFrame(double paperWidth, double paperHeight) {
    /** Left and right margin. */
    public static final double SIDE = 15;
    /** White at the upper and lower edge, header and footer included. */
    public static final double EDGE = 8;

    private static final double HEADER = 11;
    private static final double CLEAR = 4;

    /**
     * What stands at the foot of every page.
     *
     * @param measured what the maker measures first: 'machine', 'wall'
     */
    public record Foot(Units units, String measured) {}

    static PageFrame upright(Paper paper) {
        return new PageFrame(paper.width(), paper.height());
    }

    static PageFrame sideways(Paper paper) {
        return new PageFrame(paper.height(), paper.width());
    }

    public double left() {
        return SIDE;
    }

    public double width() {
        return paperWidth - 2 * SIDE;
    }

    public double top() {
        return paperHeight - HEADER - 2 - CLEAR;
    }

    /** Between header and footer. */
    public double height() {
        return top() - bottom();
    }

    public double bottom() {
        return HEADER + CLEAR;
    }

    Drawing page(List<Shape> body, Foot foot, String name, int number, int of, TextMeasure measure) {
        double right = SIDE + width();
        double head = paperHeight - HEADER;
        var shapes = new ArrayList<Shape>();
        shapes.add(Line.between(SIDE, head - 2, right, head - 2, Pen.THIN));
        shapes.add(Line.between(SIDE, HEADER + 2, right, HEADER + 2, Pen.THIN));
        var count = String.format(Locale.ROOT, "page %d of %d", number, of);
        var unit = "lengths in " + foot.units().lengthWord() + " unless marked";
        shapes.add(text(shortened(name, measure), SIDE, head, Text.Anchor.START).bold());
        shapes.add(text(count, right, head, Text.Anchor.END));
        shapes.add(text(unit, SIDE, EDGE + 1, Text.Anchor.START));
        shapes.add(text(
                "Check every size against your own " + foot.measured() + " and stock.",
                right,
                EDGE + 1,
                Text.Anchor.END));
        shapes.addAll(body);
        return new Drawing(name + ", " + count, paperWidth, paperHeight, shapes);
    }

    /** As much of a long name as the header holds beside the page number. */
    private String shortened(String name, TextMeasure measure) {
        var lines = measure.wrap(name, width() - 40, Letters.TABLE, Weight.BOLD);
        return lines.size() == 1 ? lines.get(0) : lines.get(0) + " …";
    }

    private static Text text(String words, double x, double y, Text.Anchor anchor) {
        return Text.level(words, new Point(x, y), Letters.TABLE, anchor);
    }
}
