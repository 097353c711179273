package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
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
import org.standwright.sheet.Area;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** Pieces and offcuts of a sheet with what is written in them, as large as they allow. */
record PieceLetters(Units units, TextMeasure measure) {
    private static final List<Double> SIZES = List.of(3.2, 2.8, 2.4, 2.0, Letters.SMALLEST);
    private static final double CLEAR = 0.5;
    /** Room for the wider typeface of a viewer that lacks ours. */
    private static final double WIDER = 1.18;

    private static final double HATCH = 3.5;
    private static final double GRAIN = 7;
    private static final double HEAD = 0.9;
    private static final double INSET = 1.8;

    /** A piece; its size is that of the part: length along the part's grain first. */
    List<Shape> piece(PlacedPiece piece, Rect rect, boolean grain) {
        var area = piece.area();
        var size = piece.turned() ? size(area.width(), area.length()) : size(area.length(), area.width());
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(rect, Pen.DIMENSION, Fill.WHITE));
        var reference = ReferenceMark.of(rect, piece.turned());
        shapes.add(reference.wedge());
        var lines = written(rect, List.of(List.of(piece.label(), size), List.of(piece.label() + "  " + size)))
                .or(() -> written(rect, List.of(List.of(piece.label()))))
                .orElse(List.of());
        shapes.addAll(lines);
        if (grain) {
            shapes.addAll(grainMark(rect, lines, reference.room()));
        }
        return shapes;
    }

    /** What is left over: hatched, with its size on a white ground. */
    List<Shape> offcut(Area area, Rect rect) {
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(rect, Pen.THIN, Fill.WHITE));
        shapes.addAll(hatching(rect));
        var size = size(area.length(), area.width());
        var lines =
                written(rect, List.of(List.of("offcut", size), List.of(size))).orElse(List.of());
        for (var line : Lettering.of(lines, measure).texts()) {
            shapes.add(Polygon.area(grown(line.box(), CLEAR), Fill.WHITE));
        }
        shapes.addAll(lines);
        return shapes;
    }

    private String size(int length, int width) {
        return units.bareLength(SheetUnit.mm(length)) + " × " + units.bareLength(SheetUnit.mm(width));
    }

    /** The largest letters that have room, the first wording before the others, level before upright. */
    private Optional<List<Shape>> written(Rect rect, List<List<String>> wordings) {
        for (double size : SIZES) {
            for (var lines : wordings) {
                if (fits(lines, size, rect.width(), rect.height())) {
                    return Optional.of(level(lines, size, rect));
                }
                if (fits(lines, size, rect.height(), rect.width())) {
                    return Optional.of(upright(lines, size, rect));
                }
            }
        }
        return Optional.empty();
    }

    private boolean fits(List<String> lines, double size, double along, double across) {
        double widest = lines.stream()
                .mapToDouble(line -> measure.width(line, size, Weight.BOLD))
                .max()
                .orElse(0);
        return WIDER * widest + 2 * CLEAR <= along && tall(lines, size) + 2 * CLEAR <= across;
    }

    private double tall(List<String> lines, double size) {
        return measure.above(size) + (lines.size() - 1) * measure.pitch(size);
    }

    private List<Shape> level(List<String> lines, double size, Rect rect) {
        double x = (rect.x0() + rect.x1()) / 2;
        double y = (rect.y0() + rect.y1() + tall(lines, size)) / 2 - measure.above(size);
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < lines.size(); i++) {
            var at = new Point(x, y - i * measure.pitch(size));
            var text = Text.level(lines.get(i), at, size, Text.Anchor.MIDDLE);
            shapes.add(i == 0 && lines.size() > 1 ? text.bold() : text);
        }
        return shapes;
    }

    private List<Shape> upright(List<String> lines, double size, Rect rect) {
        double x = (rect.x0() + rect.x1() - tall(lines, size)) / 2 + measure.above(size);
        double y = (rect.y0() + rect.y1()) / 2;
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < lines.size(); i++) {
            var at = new Point(x + i * measure.pitch(size), y);
            var text = Text.level(lines.get(i), at, size, Text.Anchor.MIDDLE).upward();
            shapes.add(i == 0 && lines.size() > 1 ? text.bold() : text);
        }
        return shapes;
    }

    /** A double arrow along the grain in the first corner of the piece where nothing stands. */
    private List<Shape> grainMark(Rect rect, List<Shape> lines, Rect taken) {
        var letters = Lettering.of(lines, measure);
        double left = rect.x0() + INSET;
        double right = rect.x1() - INSET - GRAIN;
        return Stream.of(rect.y0() + INSET, rect.y1() - INSET, (rect.y0() + rect.y1()) / 2)
                .flatMap(y -> Stream.of(new Point(left, y), new Point(right, y)))
                .filter(at -> isFree(at, rect, letters, taken))
                .findFirst()
                .map(PieceLetters::arrow)
                .orElse(List.of());
    }

    private static boolean isFree(Point at, Rect rect, Lettering letters, Rect taken) {
        var room = new Rect(at.x() - HEAD, at.y() - HEAD, at.x() + GRAIN + HEAD, at.y() + HEAD);
        return room.x0() > rect.x0()
                && room.x1() < rect.x1()
                && room.y0() > rect.y0()
                && room.y1() < rect.y1()
                && !Lettering.overlap(room, taken)
                && letters.leavesFree(room);
    }

    private static List<Shape> arrow(Point at) {
        double x0 = at.x();
        double x1 = at.x() + GRAIN;
        double y = at.y();
        return List.of(
                Line.between(x0, y, x1, y, Pen.DIMENSION),
                Line.between(x0, y, x0 + HEAD, y + HEAD / 2, Pen.DIMENSION),
                Line.between(x0, y, x0 + HEAD, y - HEAD / 2, Pen.DIMENSION),
                Line.between(x1, y, x1 - HEAD, y + HEAD / 2, Pen.DIMENSION),
                Line.between(x1, y, x1 - HEAD, y - HEAD / 2, Pen.DIMENSION));
    }

    /** Lines at 45° that end at the rectangle's sides. */
    private static List<Shape> hatching(Rect rect) {
        var lines = new ArrayList<Shape>();
        double reach = rect.width() + rect.height();
        for (double c = HATCH; c < reach; c += HATCH) {
            // x - x0 + y - y0 = c
            double left = Math.max(0, c - rect.height());
            double right = Math.min(c, rect.width());
            lines.add(Line.between(
                    rect.x0() + left, rect.y0() + c - left, rect.x0() + right, rect.y0() + c - right, Pen.THIN));
        }
        return lines;
    }

    private static Rect grown(Rect rect, double by) {
        return new Rect(rect.x0() - by, rect.y0() - by, rect.x1() + by, rect.y1() + by);
    }
}
