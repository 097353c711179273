package org.standwright.sheet.plan;

import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.Proof.Goal;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.sawing.Block;

/**
 * One material's share of a job: what stands behind the numbers that the search sees.
 *
 * @param blocks by index of their type in the job
 * @param sheets by index of their kind in the job
 */
public record Work(List<Block> blocks, List<StockSheet> sheets, Saw saw, Keep keep, Goal goal, PackingJob job) {
    /** Most pieces of one material. */
    static final int MOST_PIECES = 20_000;

    public Work {
        blocks = List.copyOf(blocks);
        sheets = List.copyOf(sheets);
    }

    /**
     * @param lines all of one material
     * @throws ImpossiblePlanException when no plan can do it
     */
    static Work of(Stock stock, List<CutLine> lines, Cutting cutting) {
        var work = unchecked(stock, lines, cutting);
        new Feasible(work, stock).check();
        return work;
    }

    /**
     * The same, whether or not a block fits any board and the boards suffice.
     *
     * @throws ImpossiblePlanException when there is no board, or pieces do not go together
     */
    public static Work unchecked(Stock stock, List<CutLine> lines, Cutting cutting) {
        requireFew(lines);
        var sheets = sheets(stock, lines.get(0));
        var allowance = KerfAllowance.of(stock.saw());
        var costs = Costs.of(sheets);
        var kinds = sheets.stream()
                .map(sheet -> kind(stock, sheet, allowance, costs))
                .toList();
        var rules = SawRules.of(stock.saw());
        var blocks = Blocks.of(lines, cutting, together(lines, cutting), new BlockShapes(allowance, kinds, rules));
        var job = new PackingJob(blocks.types(), kinds, rules);
        return new Work(blocks.blocks(), sheets, stock.saw(), stock.keep(), costs.goal(), job);
    }

    private static BoardKind kind(Stock stock, StockSheet sheet, KerfAllowance allowance, Costs costs) {
        return new BoardKind(
                allowance.length(sheet),
                allowance.width(sheet),
                sheet.count().orElse(BoardKind.UNLIMITED),
                costs.of(sheet),
                stock.mates(sheet));
    }

    /** What is kept together and begins with one of these lines. */
    private static List<Together> together(List<CutLine> lines, Cutting cutting) {
        var labels = lines.stream().map(CutLine::label).toList();
        return cutting.together().stream()
                .filter(group -> labels.contains(group.labels().get(0)))
                .toList();
    }

    private static List<StockSheet> sheets(Stock stock, CutLine line) {
        var sheets = stock.of(line.material());
        if (sheets.isEmpty()) {
            throw new ImpossiblePlanException(
                    "/stock/sheets",
                    "stock holds no sheet of '" + line.material().name() + "', but the cut list needs it.",
                    List.of("Add its length and width to the stock."));
        }
        return FirstCuts.of(stock.saw()).sawn(sheets);
    }

    private static void requireFew(List<CutLine> lines) {
        long pieces = lines.stream().mapToLong(CutLine::count).sum();
        if (pieces > MOST_PIECES) {
            throw new ImpossiblePlanException(
                    "",
                    "the cut list has " + pieces + " pieces of '"
                            + lines.get(0).material().name() + "', but a plan takes " + MOST_PIECES + " at most.",
                    List.of("Plan them in several jobs."));
        }
    }
}
