package org.standwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Rect;
import org.standwright.sheet.Area;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** Pieces and offcuts of a sheet with what is written in them, as large as they allow. */
record PieceLetters(Units units, TextMeasure measure) {
    private static final List<Double> SIZES = List.of(3.2, 2.8, 2.4, 2.0, Letters.SMALLEST, 1.4);
    private static final double CLEAR = 0.5;
    private static final double HATCH = 3.5;
    private static final double GRAIN = 7;
    private static final double HEAD = 0.9;

    /** A piece; its size is that of the part: length along the part's grain first. */
    List<Shape> piece(PlacedPiece piece, Rect rect, boolean grain) {
        var area = piece.area();
        var size = piece.turned() ? size(area.width(), area.length()) : size(area.length(), area.width());
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(rect, Pen.OUTLINE, Fill.WHITE));
        var lines = written(
                rect,
                List.of(List.of(piece.label(), size), List.of(piece.label() + "  " + size), List.of(piece.label())));
        shapes.addAll(lines);
        if (grain) {
            shapes.addAll(grainMark(rect, lines));
        }
        return shapes;
    }

    /** What is left over: hatched, with its size on a white ground. */
    List<Shape> offcut(Area area, Rect rect) {
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(rect, Pen.THIN, Fill.WHITE));
        shapes.addAll(hatching(rect));
        var size = size(area.length(), area.width());
        var lines = written(rect, List.of(List.of("offcut", size), List.of(size)));
        for (var line : Lettering.of(lines, measure).texts()) {
            shapes.add(Polygon.area(grown(line.box(), CLEAR), Fill.WHITE));
        }
        shapes.addAll(lines);
        return shapes;
    }

    private String size(int length, int width) {
        return units.bareLength(SheetUnit.mm(length)) + " × " + units.bareLength(SheetUnit.mm(width));
    }

    /** The first wording, in the largest letters, level before upright, that has room; else nothing. */
    private List<Shape> written(Rect rect, List<List<String>> wordings) {
        for (var lines : wordings) {
            for (double size : SIZES) {
                if (fits(lines, size, rect.width(), rect.height())) {
                    return level(lines, size, rect);
                }
                if (fits(lines, size, rect.height(), rect.width())) {
                    return upright(lines, size, rect);
                }
            }
        }
        return List.of();
    }

    private boolean fits(List<String> lines, double size, double along, double across) {
        double widest = lines.stream()
                .mapToDouble(line -> measure.width(line, size, Weight.BOLD))
                .max()
                .orElse(0);
        return widest + 2 * CLEAR <= along && tall(lines, size) + 2 * CLEAR <= across;
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
            shapes.add(i == 0 ? text.bold() : text);
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
            shapes.add(i == 0 ? text.bold() : text);
        }
        return shapes;
    }

    /** A double arrow along the grain in a corner of the piece, where no letters stand. */
    private List<Shape> grainMark(Rect rect, List<Shape> lines) {
        double x0 = rect.x0() + 1.5;
        double y = rect.y0() + 1.8;
        var room = new Rect(x0, y - HEAD, x0 + GRAIN, y + HEAD);
        if (room.x1() > rect.x1() - 1.5
                || room.y1() > rect.y1() - CLEAR
                || !Lettering.of(lines, measure).leavesFree(room)) {
            return List.of();
        }
        double x1 = room.x1();
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
