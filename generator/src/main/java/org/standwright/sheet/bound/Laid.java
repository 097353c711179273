package org.standwright.sheet.bound;

import java.util.List;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;

/** A piece in the corner of a panel, cut free so that the larger rest stays whole. */
final class Laid {
    private Laid() {}

    static CutNode in(int length, int width, CutNode.Piece piece) {
        long beside = (long) (length - piece.length()) * width;
        long above = (long) (width - piece.width()) * length;
        if (beside >= above) {
            return beside(length, width, above(piece.length(), width, piece));
        }
        return above(length, width, beside(length, piece.width(), piece));
    }

    private static CutNode beside(int length, int width, CutNode node) {
        return node.length() == length
                ? node
                : CutNode.split(
                        Direction.CROSSCUT,
                        length,
                        width,
                        List.of(node, new CutNode.Rest(length - node.length(), width)));
    }

    private static CutNode above(int length, int width, CutNode node) {
        return node.width() == width
                ? node
                : CutNode.split(
                        Direction.RIP, length, width, List.of(node, new CutNode.Rest(length, width - node.width())));
    }
}
