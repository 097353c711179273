package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.sawing.Block;

/** Cut trees with each block opened into its pieces: type i is the piece at place i of all blocks' pieces in a row. */
record FlatTree(List<Block> blocks) {

    /** By the opened trees' types. */
    List<CutLine> lines() {
        return blocks.stream().flatMap(block -> block.pieces().stream()).toList();
    }

    CutNode of(CutNode tree) {
        if (tree instanceof CutNode.Piece piece) {
            int first = blocks.subList(0, piece.type()).stream()
                    .mapToInt(block -> block.pieces().size())
                    .sum();
            return opened(blocks.get(piece.type()).inner(), first, piece.turned());
        }
        if (tree instanceof CutNode.Split split) {
            return split(split, split.direction(), split.nodes().stream().map(this::of));
        }
        return tree;
    }

    private static CutNode opened(CutNode node, int first, boolean turned) {
        if (node instanceof CutNode.Piece piece) {
            return new CutNode.Piece(
                    first + piece.type(), length(piece, turned), width(piece, turned), piece.turned() != turned);
        }
        if (node instanceof CutNode.Split split) {
            var direction = turned ? turned(split.direction()) : split.direction();
            var nodes = new ArrayList<CutNode>();
            split.nodes().forEach(inner -> nodes.add(opened(inner, first, turned)));
            return CutNode.split(direction, length(split, turned), width(split, turned), nodes);
        }
        return new CutNode.Rest(length(node, turned), width(node, turned));
    }

    private static CutNode split(CutNode.Split of, Direction direction, Stream<CutNode> nodes) {
        return CutNode.split(direction, of.length(), of.width(), nodes.toList());
    }

    private static Direction turned(Direction direction) {
        return direction == Direction.RIP ? Direction.CROSSCUT : Direction.RIP;
    }

    private static int length(CutNode node, boolean turned) {
        return turned ? node.width() : node.length();
    }

    private static int width(CutNode node, boolean turned) {
        return turned ? node.length() : node.width();
    }
}
