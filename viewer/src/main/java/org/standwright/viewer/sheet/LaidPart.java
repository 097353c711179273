package org.standwright.viewer.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.drawing.Point;
import org.standwright.make.SheetPaper;
import org.standwright.packet.words.BlankSizes;
import org.standwright.sheet.Area;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/**
 * A part of the furniture at its place on a sheet.
 *
 * @param paper index of the sheet among all
 * @param part its label in the assembly: 'left side'
 * @param area as laid on the sheet
 */
record LaidPart(int paper, CutLine line, String part, Area area) {
    /** All parts that are cut from sheets, sheet by sheet. */
    static List<LaidPart> of(CutList list, List<SheetPaper> papers) {
        var lines = list.lines().stream().collect(Collectors.toMap(CutLine::label, Function.identity()));
        var taken = new HashMap<String, Integer>();
        var laid = new ArrayList<LaidPart>();
        for (int i = 0; i < papers.size(); i++) {
            for (var piece : papers.get(i).sheet().pieces()) {
                for (var part : piece.parts()) {
                    laid.add(of(i, part, lines, taken));
                }
            }
        }
        return laid;
    }

    private static LaidPart of(int paper, PlacedPiece piece, Map<String, CutLine> lines, Map<String, Integer> taken) {
        var line = lines.get(piece.label());
        int place = taken.merge(piece.label(), 1, Integer::sum) - 1;
        return new LaidPart(paper, line, line.members().get(place), piece.area());
    }

    /** Whether it lies under a point of its board, mm. */
    boolean isAt(Point board) {
        return board.x() >= SheetUnit.mm(area.x())
                && board.x() <= SheetUnit.mm(area.endX())
                && board.y() >= SheetUnit.mm(area.y())
                && board.y() <= SheetUnit.mm(area.endY());
    }

    /** 'A  left side, 796.2 × 453.6'. */
    String words(Units units) {
        return line.label() + "  " + part + ", " + new BlankSizes(line.part(), units).rough();
    }
}
