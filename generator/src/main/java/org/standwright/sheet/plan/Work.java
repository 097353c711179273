package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;
import org.standwright.sheet.Proof.Goal;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;

/**
 * One material's share of a job: what stands behind the numbers that the search sees.
 *
 * @param lines by index of their type in the job
 * @param sheets by index of their kind in the job
 */
record Work(List<CutLine> lines, List<StockSheet> sheets, Saw saw, Keep keep, Goal goal, PackingJob job) {
    Work {
        lines = List.copyOf(lines);
        sheets = List.copyOf(sheets);
    }

    static Work of(Stock stock, List<CutLine> lines) {
        var saw = stock.saw();
        var sheets = stock.of(lines.get(0).material());
        var goal = goal(sheets);
        var allowance = KerfAllowance.of(saw);
        var kinds = new ArrayList<BoardKind>();
        for (var sheet : sheets) {
            kinds.add(new BoardKind(
                    allowance.length(sheet),
                    allowance.width(sheet),
                    sheet.count().orElse(BoardKind.UNLIMITED),
                    cost(sheet, goal),
                    true));
        }
        var types = lines.stream().map(line -> type(line, allowance)).toList();
        for (int type = 0; type < types.size(); type++) {
            requireFits(types.get(type), lines.get(type), kinds, sheets, saw);
        }
        return new Work(
                lines, sheets, saw, stock.keep(), goal, new PackingJob(types, kinds, CutRules.free(allowance.kerf())));
    }

    private static PieceType type(CutLine line, KerfAllowance allowance) {
        return new PieceType(
                allowance.enlarged(line.part().roughLength()),
                allowance.enlarged(line.part().roughWidth()),
                line.count(),
                line.material().grain() == Grain.NONE ? Ways.EITHER : Ways.STRAIGHT,
                false);
    }

    /** Money where all prices are known in one currency and differ, sheets where there is one size, else area. */
    private static Goal goal(List<StockSheet> sheets) {
        var bought = sheets.stream().filter(StockSheet::isBought).toList();
        if (bought.size() < 2) {
            return Goal.SHEETS;
        }
        boolean priced = bought.stream().allMatch(sheet -> sheet.price().isPresent())
                && bought.stream()
                                .map(sheet -> sheet.price().orElseThrow().currency())
                                .distinct()
                                .count()
                        == 1;
        return priced ? Goal.MONEY : Goal.AREA;
    }

    private static long cost(StockSheet sheet, Goal goal) {
        if (!sheet.isBought()) {
            return 0;
        }
        return switch (goal) {
            case SHEETS -> 1;
            case MONEY -> sheet.price().orElseThrow().amount().movePointRight(3).longValueExact();
            case AREA -> Math.round(sheet.length() * sheet.width());
        };
    }

    private static void requireFits(
            PieceType type, CutLine line, List<BoardKind> kinds, List<StockSheet> sheets, Saw saw) {
        if (kinds.stream().noneMatch(type::fits)) {
            boolean turned = type.ways() == Ways.TURNED
                    || type.ways() == Ways.EITHER
                            && excess(type, kinds.get(0), true) < excess(type, kinds.get(0), false);
            throw new PartTooLargeException(
                    line,
                    sheets.get(0),
                    saw,
                    SheetUnit.mm(Math.max(0, type.along(turned) - kinds.get(0).length())),
                    SheetUnit.mm(Math.max(0, type.across(turned) - kinds.get(0).width())));
        }
    }

    private static int excess(PieceType type, BoardKind kind, boolean turned) {
        return Math.max(type.along(turned) - kind.length(), type.across(turned) - kind.width());
    }
}
