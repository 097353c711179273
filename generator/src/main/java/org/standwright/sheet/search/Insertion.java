package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PieceType;

/**
 * One way to lay a piece into the corner of a rest.
 *
 * @param board index in the layout
 * @param first direction of the cut that comes first; the second, if any, is square to it
 */
record Insertion(int board, CutNode.Rest rest, int type, boolean turned, Direction first) {

    /** What the rest becomes. */
    CutNode result(PieceType type) {
        var piece = new CutNode.Piece(this.type, type.along(turned), type.across(turned), turned);
        return first == Direction.RIP ? ripFirst(piece) : crosscutFirst(piece);
    }

    private CutNode ripFirst(CutNode.Piece piece) {
        var end = new CutNode.Rest(rest.length() - piece.length(), piece.width());
        var strip = CutNode.split(Direction.CROSSCUT, rest.length(), piece.width(), List.of(piece, end));
        var beside = new CutNode.Rest(rest.length(), rest.width() - piece.width());
        return CutNode.split(Direction.RIP, rest.length(), rest.width(), List.of(strip, beside));
    }

    private CutNode crosscutFirst(CutNode.Piece piece) {
        var end = new CutNode.Rest(piece.length(), rest.width() - piece.width());
        var strip = CutNode.split(Direction.RIP, piece.length(), rest.width(), List.of(piece, end));
        var beside = new CutNode.Rest(rest.length() - piece.length(), rest.width());
        return CutNode.split(Direction.CROSSCUT, rest.length(), rest.width(), List.of(strip, beside));
    }

    /** Value that the rest loses when a piece of this extent is cut out of it. */
    static double cost(CutNode.Rest rest, int along, int across, Direction first) {
        int besideLength = rest.length() - along;
        int besideWidth = rest.width() - across;
        double left = first == Direction.RIP
                ? Board.value(rest.length(), besideWidth) + Board.value(besideLength, across)
                : Board.value(besideLength, rest.width()) + Board.value(along, besideWidth);
        return Board.value(rest) - left;
    }
}
