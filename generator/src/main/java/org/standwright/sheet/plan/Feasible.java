package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.sawing.Block;

/** Whether each block can come from some board: by its size, by the board's thickness, and with this saw. */
final class Feasible {
    private final Work work;
    private final Stock stock;

    Feasible(Work work, Stock stock) {
        this.work = work;
        this.stock = stock;
    }

    /** @throws ImpossiblePlanException when not, or when there are too few boards */
    void check() {
        for (int type = 0; type < work.blocks().size(); type++) {
            check(work.blocks().get(type), work.job().types().get(type));
        }
        new Quantities(work).check();
    }

    private void check(Block block, PieceType type) {
        var kinds = work.job().kinds();
        var overhang = Overhang.least(type, kinds);
        if (!overhang.isNone()) {
            throw tooLarge(block, type, overhang);
        }
        if (kinds.stream().noneMatch(type::fits)) {
            throw ImpossiblePlanException.notMating(named(block, type), work.sheets(), stock.fit());
        }
        if (kinds.stream().noneMatch(kind -> work.job().rules().begins(type, kind))) {
            throw notSawn(block, type);
        }
    }

    private ImpossiblePlanException tooLarge(Block block, PieceType type, Overhang overhang) {
        var nearest = work.sheets().get(overhang.kind());
        boolean turned = Overhang.fitsTurned(type, work.job().kinds());
        double length = SheetUnit.mm(overhang.length());
        double width = SheetUnit.mm(overhang.width());
        if (block.pieces().size() == 1) {
            return new PartTooLargeException(block.pieces().get(0), nearest, work.saw(), length, width, turned);
        }
        var ways = new ArrayList<>(List.of("Keep fewer together, or buy a sheet of at least "
                + size(nearest.length() + length, nearest.width() + width) + "."));
        if (turned) {
            ways.add(PartTooLargeException.turned(names(block)));
        }
        return new ImpossiblePlanException(
                "/cutting/together",
                named(block, type) + " is larger than '" + nearest.name() + "', "
                        + size(nearest.length(), nearest.width()) + ", after trimming.",
                ways);
    }

    private ImpossiblePlanException notSawn(Block block, PieceType type) {
        var tight = TightCut.of(work.job(), type);
        if (tight.isPresent()) {
            return new ImpossiblePlanException(
                    "/saw",
                    named(block, type) + " cannot be sawn from any board: "
                            + tight.get().reason(),
                    tight.get().waysOut(work.saw()));
        }
        var longest = new ArrayList<String>();
        work.saw().longestRip().ifPresent(most -> longest.add(mm(most) + " mm in a rip"));
        work.saw().longestCrosscut().ifPresent(most -> longest.add(mm(most) + " mm in a crosscut"));
        var ways = new ArrayList<String>();
        if (work.saw().breakDown().isEmpty()) {
            ways.add("Add a break-down saw: \"breakDown\": {}.");
        }
        ways.add("Allow longer cuts or either direction first, or stock boards that the saw can divide.");
        return new ImpossiblePlanException(
                "/saw",
                named(block, type) + " cannot be sawn from any board"
                        + (longest.isEmpty() ? "" : " by a saw that cuts " + String.join(" and ", longest))
                        + (work.saw().breakDown().isEmpty() ? ", without a break-down saw." : "."),
                ways);
    }

    /** 'B' (side, 700 x 300 mm), or 'C + D' cut as one block (600 x 400 mm). */
    private String named(Block block, PieceType type) {
        int kerf = work.job().rules().kerf();
        var size = size(SheetUnit.mm(type.length() - kerf), SheetUnit.mm(type.width() - kerf));
        return block.pieces().size() == 1
                ? "cut line '" + block.label() + "' (" + names(block) + ", " + size + ")"
                : "'" + block.label() + "' cut as one block (" + names(block) + ", " + size + ")";
    }

    private static String names(Block block) {
        return block.pieces().stream()
                .map(CutLine::part)
                .map(part -> part.name())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String size(double length, double width) {
        return mm(length) + " x " + mm(width) + " mm";
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm);
    }
}
