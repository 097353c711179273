package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.wall.HoldWord;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.figure.Figure;
import org.standwright.geom.Rect;

/** What lines, areas and letters of an elevation stand for, in rows no wider than given. */
final class ElevationKey {
    private static final double SIZE = 2.4;
    private static final double SAMPLE = 9;
    private static final double HEIGHT = 3.6;
    private static final double GAP = 1.5;
    private static final double BETWEEN = 4;
    private static final double PITCH = 4.4;

    private final double width;
    private final TextMeasure measure;
    private final List<Shape> shapes = new ArrayList<>();
    private double x;
    private double y;

    private ElevationKey(double width, TextMeasure measure) {
        this.width = width;
        this.measure = measure;
    }

    /**
     * @param letters of things whose names had no room, with the names
     */
    static Figure of(CleatedWall wall, boolean holders, List<String> letters, double width, TextMeasure measure) {
        var key = new ElevationKey(width, measure);
        key.area("bare wall", Fill.PALE, List.of());
        var hatches = wall.zones().stream()
                .filter(zone -> !zone.kept().equals(zone.itself()))
                .map(zone -> Hatch.of(zone.kind()))
                .collect(Collectors.toSet());
        Arrays.stream(Hatch.values())
                .filter(hatches::contains)
                .forEach(hatch -> key.area(hatch.words(), Fill.WHITE, hatch.over(new Rect(0, 0, SAMPLE, HEIGHT))));
        key.line(Pen.HIDDEN, HoldWord.of(wall.wall().framing()).one() + ", its number at its foot");
        key.line(Pen.CENTRE, "level line");
        if (!wall.strips().isEmpty()) {
            key.area("strip; thin: its bevel at the wall", Fill.LIGHT, List.of());
            key.screw();
        }
        if (!wall.strips().isEmpty()) {
            key.words("3.2: strip 2 of row 3");
        }
        if (wall.wall().obstacles().stream()
                .anyMatch(obstacle -> obstacle.swing().isPresent())) {
            key.words("V on a door points at its hinges");
        }
        if (holders) {
            key.line(Pen.OUTLINE, "holder");
            key.line(Pen.DOTTED, "it with its things");
        }
        key.breakLine();
        letters.forEach(key::words);
        return Figure.around(key.shapes, measure);
    }

    /** Of letters alone. */
    static Figure of(List<String> letters, double width, TextMeasure measure) {
        var key = new ElevationKey(width, measure);
        letters.forEach(key::words);
        return Figure.around(key.shapes, measure);
    }

    private void area(String words, Fill fill, List<Shape> over) {
        place(SAMPLE + GAP + wide(words));
        var at = new Rect(x, y, x + SAMPLE, y + HEIGHT);
        shapes.add(Polygon.of(at, Pen.THIN, fill));
        if (!over.isEmpty()) {
            shapes.add(new Group(new Point(x, y), over));
        }
        named(SAMPLE, words);
    }

    private void line(Pen pen, String words) {
        place(SAMPLE + GAP + wide(words));
        shapes.add(Line.between(x, y + HEIGHT / 2, x + SAMPLE, y + HEIGHT / 2, pen));
        named(SAMPLE, words);
    }

    private void screw() {
        var words = "screw";
        double sample = 2 * StripShapes.SCREW;
        place(sample + GAP + wide(words));
        shapes.add(new Arc(new Point(x + StripShapes.SCREW, y + HEIGHT / 2), StripShapes.SCREW, 0, 360, Pen.DIMENSION));
        named(sample, words);
    }

    private void words(String words) {
        place(wide(words));
        named(-GAP, words);
    }

    private double wide(String words) {
        return measure.width(words, SIZE, Weight.REGULAR);
    }

    private void place(double wide) {
        if (x > 0 && x + wide > width) {
            breakLine();
        }
    }

    private void breakLine() {
        x = 0;
        y -= PITCH;
    }

    private void named(double sample, String words) {
        double from = x + sample + GAP;
        double base = y + (HEIGHT - measure.above(SIZE)) / 2;
        shapes.add(Text.level(words, new Point(from, base), SIZE, Text.Anchor.START));
        x = from + wide(words) + BETWEEN;
    }
}
