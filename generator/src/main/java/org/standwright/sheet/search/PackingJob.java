package org.standwright.sheet.search;

import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Saw;
import org.standwright.part.Grain;
import org.standwright.part.SheetGood;
import org.standwright.sheet.SheetUnit;

/**
 * What to cut from equal boards, with kerf and trim taken out of the picture: lay the types on boards of length by
 * width so that they do not overlap and every cut runs from edge to edge.
 */
record PackingJob(SheetGood sheet, KerfAllowance allowance, int length, int width, List<PieceType> types) {
    PackingJob {
        types = List.copyOf(types);
    }

    static PackingJob of(SheetGood sheet, Saw saw, List<CutLine> lines) {
        var allowance = KerfAllowance.of(saw);
        int length = allowance.enlargedBoard(sheet.length(), sheet);
        int width = allowance.enlargedBoard(sheet.width(), sheet);
        var types = lines.stream().map(line -> type(line, allowance)).toList();
        var job = new PackingJob(sheet, allowance, length, width, types);
        types.forEach(job::requireFits);
        return job;
    }

    long boardArea() {
        return (long) length * width;
    }

    int pieceCount() {
        return types.stream().mapToInt(PieceType::count).sum();
    }

    boolean fits(PieceType type, boolean turned) {
        return (!turned || type.turnable()) && type.along(turned) <= length && type.across(turned) <= width;
    }

    private static PieceType type(CutLine line, KerfAllowance allowance) {
        int length = allowance.enlarged(line.part().roughLength());
        int width = allowance.enlarged(line.part().roughWidth());
        boolean turnable = line.material().grain() == Grain.NONE && length != width;
        return new PieceType(line, length, width, turnable);
    }

    private void requireFits(PieceType type) {
        if (!fits(type, false) && !fits(type, true)) {
            boolean turned = type.turnable() && excess(type, true) < excess(type, false);
            throw new PartTooLargeException(
                    type.line(),
                    sheet,
                    SheetUnit.mm(allowance.trim()),
                    SheetUnit.mm(excessLength(type, turned)),
                    SheetUnit.mm(excessWidth(type, turned)));
        }
    }

    private int excess(PieceType type, boolean turned) {
        return Math.max(excessLength(type, turned), excessWidth(type, turned));
    }

    private int excessLength(PieceType type, boolean turned) {
        return Math.max(0, type.along(turned) - length);
    }

    private int excessWidth(PieceType type, boolean turned) {
        return Math.max(0, type.across(turned) - width);
    }
}
