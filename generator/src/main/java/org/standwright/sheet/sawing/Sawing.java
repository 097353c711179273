package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.CutTree;

/** Saws the boards of one material along their cut trees: places, offcuts, and the cuts of all boards in order. */
public final class Sawing {
    private Sawing() {}

    /**
     * Boards in the order of their trees, each cut numbered in the order of all.
     *
     * @param from the boards themselves, by the trees' kinds
     * @param blocks by the trees' types
     * @param later labels of the pieces that wait: what parts nothing else is cut last
     */
    public static List<PlannedSheet> of(
            List<StockSheet> from, List<CutTree> trees, List<Block> blocks, Saw saw, Keep keep, Set<String> later) {
        var blades = Blades.of(saw);
        var steps = new ArrayList<Step>();
        var boards = new ArrayList<BoardSawing>();
        for (var tree : trees) {
            var empty = new PlannedSheet(from.get(tree.kind()), List.of(), List.of(), List.of());
            var board = new BoardSawing(blades, new Bench(boards.size(), later, steps));
            board.sawBoard(Opening.of(tree.root(), blocks, blades), empty.board(), empty.trimmed(saw));
            boards.add(board);
        }
        var cuts = inOrder(steps, boards.size());
        var planned = new ArrayList<PlannedSheet>();
        for (int i = 0; i < boards.size(); i++) {
            var board = boards.get(i);
            var offcuts =
                    board.lefts().stream().filter(left -> isWorth(keep, left)).toList();
            planned.add(new PlannedSheet(from.get(trees.get(i).kind()), board.pieces(), cuts.get(i), offcuts));
        }
        return planned;
    }

    private static boolean isWorth(Keep keep, Area left) {
        return keep.isWorth(SheetUnit.mm(left.length()), SheetUnit.mm(left.width()));
    }

    /** By board. */
    private static List<List<Cut>> inOrder(List<Step> steps, int boards) {
        var cuts = new ArrayList<List<Cut>>();
        for (int i = 0; i < boards; i++) {
            cuts.add(new ArrayList<>());
        }
        int number = 1;
        for (int index : CuttingOrder.of(steps)) {
            var step = steps.get(index);
            cuts.get(step.sheet()).add(step.numbered(number++));
        }
        return cuts;
    }
}
