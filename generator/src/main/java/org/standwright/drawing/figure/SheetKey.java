package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlannedSheet;

/** What the lines and areas of a sheet's figure stand for. */
public final class SheetKey {
    private static final double SAMPLE = 12;
    private static final double HEIGHT = 4;
    private static final double GAP = 2;
    private static final double BETWEEN = 6;

    private final TextMeasure measure;
    private final List<Shape> shapes = new ArrayList<>();
    private double x;

    private SheetKey(TextMeasure measure) {
        this.measure = measure;
    }

    /** In one row; hand-held cuts only where a sheet has some. */
    public static Figure of(List<PlannedSheet> sheets, TextMeasure measure) {
        var key = new SheetKey(measure);
        key.line(Pen.CUT, "saw cut");
        if (sheets.stream().flatMap(SheetKey::cuts).anyMatch(cut -> cut.tool() == Cut.Tool.BREAK_DOWN_SAW)) {
            key.line(Pen.HAND_CUT, "hand-held saw");
        }
        key.line(Pen.HIDDEN, "trim");
        key.offcut();
        return Figure.around(key.shapes, measure);
    }

    private static Stream<Cut> cuts(PlannedSheet sheet) {
        return sheet.cuts().stream();
    }

    private void line(Pen pen, String words) {
        shapes.add(Line.between(x, HEIGHT / 2, x + SAMPLE, HEIGHT / 2, pen));
        named(words);
    }

    private void offcut() {
        var area = new Rect(x, 0, x + SAMPLE, HEIGHT);
        shapes.add(Polygon.of(area, Pen.THIN, Fill.WHITE));
        shapes.addAll(OffcutMark.hatching(area));
        named("offcut to keep");
    }

    private void named(String words) {
        double y = (HEIGHT - measure.above(Letters.TABLE)) / 2;
        double from = x + SAMPLE + GAP;
        shapes.add(Text.level(words, new Point(from, y), Letters.TABLE, Text.Anchor.START));
        x = from + measure.width(words, Letters.TABLE, Weight.REGULAR) + BETWEEN;
    }
}
