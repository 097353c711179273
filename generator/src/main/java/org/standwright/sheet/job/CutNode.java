package org.standwright.sheet.job;

import java.util.ArrayList;
import java.util.List;
import org.standwright.sheet.Cut;

/**
 * A board as a tree of cuts, sizes enlarged by the kerf and no places yet: a piece, a rest, or a split into nodes that
 * lie one after the other and share their other side. The tree is the proof that every cut runs from edge to edge.
 *
 * <p>{@link #split} keeps it plain: no split in a split of the same direction, at most one rest in a split (the order
 * of its nodes is free, so rests merge), at least two nodes.
 */
public sealed interface CutNode {
    /** Along the sheet's length. */
    int length();

    /** Across the sheet. */
    int width();

    /** @param type index in the job */
    record Piece(int type, int length, int width, boolean turned) implements CutNode {}

    record Rest(int length, int width) implements CutNode {
        public long area() {
            return (long) length * width;
        }
    }

    /** @param direction of the cuts between the nodes: rip cuts divide the width */
    record Split(Cut.Direction direction, int length, int width, List<CutNode> nodes) implements CutNode {}

    /** This tree with the one node {@code old} (the object itself) changed. */
    default CutNode replace(CutNode old, CutNode by) {
        if (this == old) {
            return by;
        }
        if (this instanceof Split split) {
            for (int i = 0; i < split.nodes.size(); i++) {
                var node = split.nodes.get(i);
                var changed = node.replace(old, by);
                if (changed != node) {
                    var nodes = new ArrayList<>(split.nodes);
                    nodes.set(i, changed);
                    return split(split.direction, split.length, split.width, nodes);
                }
            }
        }
        return this;
    }

    /** A board of this size divided into nodes whose sizes add up to it. */
    static CutNode split(Cut.Direction direction, int length, int width, List<CutNode> nodes) {
        var plain = new ArrayList<CutNode>(nodes.size() + 2);
        int rest = 0;
        for (var node : nodes) {
            rest += gather(node, direction, plain);
        }
        if (rest > 0) {
            plain.add(direction == Cut.Direction.RIP ? new Rest(length, rest) : new Rest(rest, width));
        }
        return plain.size() == 1 ? plain.get(0) : new Split(direction, length, width, plain);
    }

    /** Adds the node, or those of a split in the same direction; returns the size of rests left out. */
    private static int gather(CutNode node, Cut.Direction direction, List<CutNode> plain) {
        if (node instanceof Rest) {
            return extent(node, direction);
        }
        int rest = 0;
        if (node instanceof Split split && split.direction == direction) {
            for (var inner : split.nodes) {
                rest += gather(inner, direction, plain);
            }
        } else {
            plain.add(node);
        }
        return rest;
    }

    /** Size in the sense that cuts of this direction divide. */
    static int extent(CutNode node, Cut.Direction direction) {
        return direction == Cut.Direction.RIP ? node.width() : node.length();
    }
}
