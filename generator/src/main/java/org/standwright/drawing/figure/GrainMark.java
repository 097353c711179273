package org.standwright.drawing.figure;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.geom.Rect;

/** A double arrow along a sheet's length: the way its grain runs. */
final class GrainMark {
    private static final List<Double> LENGTHS = List.of(10.0, 7.0, 4.0);
    private static final double HEAD = 0.9;
    private static final double INSET = 1.8;

    private GrainMark() {}

    /** As long as there is room, in the first corner of the piece where nothing stands; nothing where all are taken. */
    static List<Shape> in(Rect piece, Lettering letters, Rect taken) {
        return LENGTHS.stream()
                .flatMap(length -> places(piece, length).map(at -> room(at, length)))
                .filter(room -> isFree(room, piece, letters, taken))
                .findFirst()
                .map(GrainMark::arrow)
                .orElse(List.of());
    }

    private static Stream<Point> places(Rect piece, double length) {
        double left = piece.x0() + INSET;
        double right = piece.x1() - INSET - length;
        return Stream.of(piece.y0() + INSET, piece.y1() - INSET, (piece.y0() + piece.y1()) / 2)
                .flatMap(y -> Stream.of(new Point(left, y), new Point(right, y)));
    }

    private static Rect room(Point at, double length) {
        return new Rect(at.x() - HEAD, at.y() - HEAD, at.x() + length + HEAD, at.y() + HEAD);
    }

    private static boolean isFree(Rect room, Rect piece, Lettering letters, Rect taken) {
        return room.x0() > piece.x0()
                && room.x1() < piece.x1()
                && room.y0() > piece.y0()
                && room.y1() < piece.y1()
                && !Lettering.overlap(room, taken)
                && letters.leavesFree(room);
    }

    private static List<Shape> arrow(Rect room) {
        double x0 = room.x0() + HEAD;
        double x1 = room.x1() - HEAD;
        double y = (room.y0() + room.y1()) / 2;
        return List.of(
                Line.between(x0, y, x1, y, Pen.DIMENSION),
                Line.between(x0, y, x0 + HEAD, y + HEAD / 2, Pen.DIMENSION),
                Line.between(x0, y, x0 + HEAD, y - HEAD / 2, Pen.DIMENSION),
                Line.between(x1, y, x1 - HEAD, y + HEAD / 2, Pen.DIMENSION),
                Line.between(x1, y, x1 - HEAD, y - HEAD / 2, Pen.DIMENSION));
    }
}
