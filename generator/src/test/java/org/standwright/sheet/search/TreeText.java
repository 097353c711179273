package org.standwright.sheet.search;

import java.util.stream.Collectors;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;

/** A cut tree in one line: {@code rip(60x20 A|rest 60x40)}; the types are letters, nodes in alphabetical order. */
final class TreeText {
    private TreeText() {}

    static String of(CutNode node) {
        if (node instanceof CutNode.Split split) {
            return (split.direction() == Direction.RIP ? "rip(" : "crosscut(")
                    + split.nodes().stream().map(TreeText::of).sorted().collect(Collectors.joining("|"))
                    + ")";
        }
        var size = node.length() + "x" + node.width();
        return node instanceof CutNode.Piece piece ? size + " " + (char) ('A' + piece.type()) : "rest " + size;
    }
}
