package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.List;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PackingJob;

/** One board's cut tree with its rests and its other nodes listed. Never changes. */
final class Board {
    private final CutNode tree;
    private final List<CutNode.Rest> rests = new ArrayList<>();
    private final List<CutNode> nodes = new ArrayList<>();
    private final double restValue;

    Board(CutNode tree) {
        this.tree = tree;
        collect(tree);
        this.restValue = rests.stream().mapToDouble(Board::value).sum();
    }

    static Board whole(PackingJob job) {
        return new Board(
                new CutNode.Rest(job.kinds().get(0).length(), job.kinds().get(0).width()));
    }

    CutNode tree() {
        return tree;
    }

    List<CutNode.Rest> rests() {
        return rests;
    }

    /** Pieces and splits. */
    List<CutNode> nodes() {
        return nodes;
    }

    double restValue() {
        return restValue;
    }

    boolean isWhole() {
        return nodes.isEmpty();
    }

    /**
     * Worth of a rest: area^1.25, so that one large rest beats two small ones. Square roots are exact to the last bit
     * on every machine, powers are not.
     */
    static double value(CutNode.Rest rest) {
        return value(rest.length(), rest.width());
    }

    static double value(long length, long width) {
        double area = length * width;
        return area * Math.sqrt(Math.sqrt(area));
    }

    private void collect(CutNode node) {
        if (node instanceof CutNode.Rest rest) {
            rests.add(rest);
            return;
        }
        nodes.add(node);
        if (node instanceof CutNode.Split split) {
            split.nodes().forEach(this::collect);
        }
    }
}
