package org.standwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.part.Edge;
import org.standwright.sheet.Cut.Direction;

/** What lies on the bench between two cuts, and how each of its edges came about. */
record Panel(Area area, Origin x0, Origin x1, Origin y0, Origin y1) {
    /** How an edge came about. */
    enum Origin {
        FACTORY,
        /** True: by the saw, or by a hand-held one along the edge of a piece. */
        SAWN,
        /** By a hand-held saw beside all pieces. */
        ROUGH
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
    List<Panel> divided(Cut cut, PlannedSheet sheet) {
        var strip = cut.kerf();
        if (cut.direction() == Direction.RIP) {
            var near = new Area(area.x(), area.y(), area.length(), strip.y() - area.y());
            var far = new Area(area.x(), strip.endY(), area.length(), area.endY() - strip.endY());
            return List.of(
                    new Panel(near, x0, x1, y0, by(cut, near, Edge.Y1, sheet)),
                    new Panel(far, x0, x1, by(cut, far, Edge.Y0, sheet), y1));
        }
        var near = new Area(area.x(), area.y(), strip.x() - area.x(), area.width());
        var far = new Area(strip.endX(), area.y(), area.endX() - strip.endX(), area.width());
        return List.of(
                new Panel(near, x0, by(cut, near, Edge.X1, sheet), y0, y1),
                new Panel(far, by(cut, far, Edge.X0, sheet), x1, y0, y1));
    }

    private static Origin by(Cut cut, Area half, Edge edge, PlannedSheet sheet) {
        boolean isTrue = cut.tool() == Cut.Tool.SAW
                || sheet.pieces().stream()
                        .map(PlacedPiece::area)
                        .anyMatch(piece -> half.holds(piece) && place(piece, edge) == place(half, edge));
        return isTrue ? Origin.SAWN : Origin.ROUGH;
    }

    /** The pieces that are still in it. */
    Stream<PlacedPiece> pieces(PlannedSheet sheet) {
        return sheet.pieces().stream().filter(piece -> area.holds(piece.area()));
    }
}
