package org.standwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.part.Edge;
import org.standwright.sheet.Cut.Direction;

/** What lies on the bench between two cuts, and what each of its edges was made by. */
record Panel(Area area, Origin x0, Origin x1, Origin y0, Origin y1) {
    enum Origin {
        FACTORY,
        SAW,
        BREAK_DOWN_SAW
    }

    static Panel of(Area board) {
        return new Panel(board, Origin.FACTORY, Origin.FACTORY, Origin.FACTORY, Origin.FACTORY);
    }

    Origin origin(Edge edge) {
        return switch (edge) {
            case X0 -> x0;
            case X1 -> x1;
            case Y0 -> y0;
            case Y1 -> y1;
        };
    }

    /** Where an edge lies: x of an end, y of an edge. */
    int place(Edge edge) {
        return place(area, edge);
    }

    static int place(Area area, Edge edge) {
        return switch (edge) {
            case X0 -> area.x();
            case X1 -> area.endX();
            case Y0 -> area.y();
            case Y1 -> area.endY();
        };
    }

    static Edge opposite(Edge edge) {
        return switch (edge) {
            case X0 -> Edge.X1;
            case X1 -> Edge.X0;
            case Y0 -> Edge.Y1;
            case Y1 -> Edge.Y0;
        };
    }

    /** What cuts of this direction divide. */
    int extent(Direction direction) {
        return direction == Direction.RIP ? area.width() : area.length();
    }

    /** Whether the blade runs off this edge. */
    boolean isLost(Edge edge, Cut cut) {
        return place(cut.kerf(), edge) == place(edge);
    }

    /** Whether the cut runs through it from edge to edge and leaves something. */
    boolean isDividedBy(Cut cut) {
        var strip = cut.kerf();
        return cut.direction() == Direction.RIP
                ? strip.x() == area.x()
                        && strip.length() == area.length()
                        && within(strip.y(), strip.endY(), area.y(), area.endY())
                : strip.y() == area.y()
                        && strip.width() == area.width()
                        && within(strip.x(), strip.endX(), area.x(), area.endX());
    }

    private static boolean within(int from, int to, int start, int end) {
        return from >= start && to <= end && (from > start || to < end) && (from < to || from > start && to < end);
    }

    /** The near half, then the far one; one of them is empty where the blade runs off. */
    List<Panel> divided(Cut cut) {
        var strip = cut.kerf();
        var by = cut.tool() == Cut.Tool.SAW ? Origin.SAW : Origin.BREAK_DOWN_SAW;
        if (cut.direction() == Direction.RIP) {
            return List.of(
                    new Panel(new Area(area.x(), area.y(), area.length(), strip.y() - area.y()), x0, x1, y0, by),
                    new Panel(
                            new Area(area.x(), strip.endY(), area.length(), area.endY() - strip.endY()),
                            x0,
                            x1,
                            by,
                            y1));
        }
        return List.of(
                new Panel(new Area(area.x(), area.y(), strip.x() - area.x(), area.width()), x0, by, y0, y1),
                new Panel(new Area(strip.endX(), area.y(), area.endX() - strip.endX(), area.width()), by, x1, y0, y1));
    }

    /** The pieces that are still in it. */
    Stream<PlacedPiece> pieces(PlannedSheet sheet) {
        return sheet.pieces().stream().filter(piece -> area.holds(piece.area()));
    }
}
