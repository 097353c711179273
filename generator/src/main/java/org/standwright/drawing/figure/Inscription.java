package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/**
 * Lines in the middle of an area, the first bold and as large as there is room for, level or else upright.
 *
 * @param lines none empty
 */
record Inscription(List<String> lines, TextMeasure measure) {
    /** White around letters, and how much more there is for each mm of the first line's size. */
    private static final double CLEAR = 0.4;

    private static final double CLEAR_OF_SIZE = 0.2;
    /** Room for the wider typeface of a viewer that lacks ours. */
    private static final double WIDER = 1.18;

    private static final List<Sizes> SIZES = List.of(
            new Sizes(7, 3.2),
            new Sizes(5.5, 2.9),
            new Sizes(4.4, 2.6),
            new Sizes(3.4, 2.3),
            new Sizes(2.8, 2.0),
            new Sizes(2.2, 1.8),
            new Sizes(Letters.SMALLEST, Letters.SMALLEST));

    /** Of the first line and of those below it, mm. */
    record Sizes(double first, double others) {
        private double of(int line) {
            return line == 0 ? first : others;
        }

        private double clear() {
            return CLEAR + CLEAR_OF_SIZE * (first - Letters.SMALLEST);
        }
    }

    Inscription {
        lines = List.copyOf(lines);
    }

    /**
     * The largest letters that have room, an earlier wording before a later one of the same size.
     *
     * @param least size of the first line, mm
     * @param most size of the first line, mm
     */
    static Optional<List<Shape>> largest(
            List<List<String>> wordings, Rect area, double least, double most, TextMeasure measure) {
        return SIZES.stream()
                .filter(sizes -> sizes.first() >= least && sizes.first() <= most)
                .flatMap(sizes -> wordings.stream()
                        .flatMap(lines -> new Inscription(lines, measure).within(area, sizes).stream()))
                .findFirst();
    }

    private Optional<List<Shape>> within(Rect area, Sizes sizes) {
        if (fits(sizes, area.width(), area.height())) {
            return Optional.of(level(sizes, area));
        }
        return fits(sizes, area.height(), area.width()) ? Optional.of(upright(sizes, area)) : Optional.empty();
    }

    private boolean fits(Sizes sizes, double along, double across) {
        double widest = 0;
        for (int i = 0; i < lines.size(); i++) {
            widest = Math.max(widest, measure.width(lines.get(i), sizes.of(i), Weight.BOLD));
        }
        return WIDER * widest + 2 * sizes.clear() <= along && tall(sizes) + 2 * sizes.clear() <= across;
    }

    private double tall(Sizes sizes) {
        return measure.above(sizes.first()) + (lines.size() - 1) * measure.pitch(sizes.others());
    }

    private List<Shape> level(Sizes sizes, Rect area) {
        double x = (area.x0() + area.x1()) / 2;
        double y = (area.y0() + area.y1() + tall(sizes)) / 2 - measure.above(sizes.first());
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < lines.size(); i++) {
            shapes.add(text(i, new Point(x, y - i * measure.pitch(sizes.others())), sizes));
        }
        return shapes;
    }

    private List<Shape> upright(Sizes sizes, Rect area) {
        double x = (area.x0() + area.x1() - tall(sizes)) / 2 + measure.above(sizes.first());
        double y = (area.y0() + area.y1()) / 2;
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < lines.size(); i++) {
            shapes.add(text(i, new Point(x + i * measure.pitch(sizes.others()), y), sizes)
                    .upward());
        }
        return shapes;
    }

    private Text text(int line, Point at, Sizes sizes) {
        var text = Text.level(lines.get(line), at, sizes.of(line), Text.Anchor.MIDDLE);
        return line == 0 ? text.bold() : text;
    }
}
