package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;

/** Judges cut trees by what a packing job allows, node by node; knows nothing of how they were found. */
final class TreeCheck {
    private final PackingJob job;
    private final int[] cut;
    private final List<String> faults = new ArrayList<>();

    private TreeCheck(PackingJob job) {
        this.job = job;
        this.cut = new int[job.types().size()];
    }

    /** One sentence for each fault, none if the trees answer the job. */
    static List<String> faults(PackingJob job, List<CutTree> trees) {
        var check = new TreeCheck(job);
        var used = new int[job.kinds().size()];
        for (var tree : trees) {
            used[tree.kind()]++;
            check.board(tree);
        }
        for (int kind = 0; kind < used.length; kind++) {
            if (used[kind] > job.kinds().get(kind).count()) {
                check.faults.add("too many boards of kind " + kind);
            }
        }
        for (int type = 0; type < check.cut.length; type++) {
            if (check.cut[type] != job.types().get(type).count()) {
                check.faults.add("type " + type + " is cut " + check.cut[type] + " times");
            }
        }
        return check.faults;
    }

    private void board(CutTree tree) {
        var kind = job.kinds().get(tree.kind());
        if (tree.root().length() != kind.length() || tree.root().width() != kind.width()) {
            faults.add("a root as large as no board of its kind");
        }
        if (tree.root() instanceof CutNode.Rest) {
            faults.add("an uncut board");
        }
        if (tree.root() instanceof CutNode.Split split) {
            boolean asAsked = job.rules().first() == First.EITHER
                    || split.direction() == (job.rules().first() == First.RIP ? Direction.RIP : Direction.CROSSCUT);
            if (!asAsked && split.nodes().stream().noneMatch(CutNode.Piece.class::isInstance)) {
                faults.add("a first cut in the wrong direction");
            }
            node(tree.root(), asAsked ? 0 : 1, kind.mating());
        } else {
            node(tree.root(), 0, kind.mating());
        }
    }

    /** @param stages of cuts that lead to the node */
    private void node(CutNode node, int stages, boolean mating) {
        if (node.length() <= 0 || node.width() <= 0) {
            faults.add("a node of no size: " + node);
        }
        if (node instanceof CutNode.Piece piece) {
            piece(piece, mating);
        } else if (node instanceof CutNode.Split split) {
            split(split, stages + 1, mating);
        }
    }

    private void piece(CutNode.Piece piece, boolean mating) {
        var type = job.types().get(piece.type());
        cut[piece.type()]++;
        if (!type.allows(piece.turned())
                || piece.length() != type.along(piece.turned())
                || piece.width() != type.across(piece.turned())) {
            faults.add("a piece of the wrong size or position: " + piece);
        }
        if (type.mating() && !mating) {
            faults.add("a mating piece on a board that does not mate");
        }
    }

    private void split(CutNode.Split split, int stage, boolean mating) {
        boolean rip = split.direction() == Direction.RIP;
        int extra = job.rules().extra(split.direction(), rip ? split.length() : split.width());
        if (extra == CutRules.NONE) {
            faults.add("a cut too long for the saw");
        }
        long sum = (long) (split.nodes().size() - 1) * Math.max(0, extra);
        for (var node : split.nodes()) {
            sum += rip ? node.width() : node.length();
            if ((rip ? node.length() : node.width()) != (rip ? split.length() : split.width())) {
                faults.add("a node that does not reach from side to side");
            }
            if (node instanceof CutNode.Split inner && inner.direction() == split.direction()) {
                faults.add("a split in a split of its own direction");
            }
            node(node, stage, mating);
        }
        if (sum != (rip ? split.width() : split.length())) {
            faults.add("nodes that do not add up to their split");
        }
        long rests =
                split.nodes().stream().filter(CutNode.Rest.class::isInstance).count();
        if (split.nodes().size() < 2 || rests > 1) {
            faults.add("a split of one node, or of two rests");
        }
        boolean trims = split.nodes().size() == 2
                && rests == 1
                && split.nodes().stream().anyMatch(CutNode.Piece.class::isInstance);
        long most = job.rules().stages();
        if (stage > most + (trims ? 1 : 0)) {
            faults.add("stage " + stage + " of " + most);
        }
    }
}
