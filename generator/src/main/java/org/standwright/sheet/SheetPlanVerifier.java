package org.standwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Grain;
import org.standwright.part.Material;

/**
 * Judges a finished plan by its coordinates alone, knowing nothing of how it was found: every piece is there as often
 * as the cut list says, at its size, with its grain along the sheet's; every sheet can be sawn as drawn.
 */
public final class SheetPlanVerifier {
    private final SheetPlan plan;
    private final CutList cutList;
    private final Stock stock;
    private final List<String> faults = new ArrayList<>();

    private SheetPlanVerifier(Stock stock, CutList cutList, SheetPlan plan) {
        this.stock = stock;
        this.cutList = cutList;
        this.plan = plan;
    }

    /** One sentence for each fault, none if the plan is sound. */
    public static List<String> faults(Stock stock, CutList cutList, SheetPlan plan) {
        var verifier = new SheetPlanVerifier(stock, cutList, plan);
        verifier.checkMaterials();
        verifier.checkPieces();
        verifier.checkSheets();
        return List.copyOf(verifier.faults);
    }

    private void checkMaterials() {
        if (!plan.saw().equals(stock.saw())) {
            faults.add("The plan is for another saw than the stock's.");
        }
        var seen = new ArrayList<Material>();
        for (var material : plan.materials()) {
            var name = material.material().name();
            boolean known =
                    material.sheets().stream().allMatch(sheet -> stock.sheets().contains(sheet.from()));
            if (seen.contains(material.material()) || !known) {
                faults.add("Sheets of '" + name + "' are planned twice or not in stock.");
            }
            seen.add(material.material());
        }
    }

    private void checkPieces() {
        var lines = new LinkedHashMap<String, CutLine>();
        var left = new LinkedHashMap<String, Integer>();
        for (var line : cutList.sheetLines()) {
            lines.put(line.label(), line);
            left.merge(line.label(), line.count(), Integer::sum);
        }
        for (var material : plan.materials()) {
            for (var sheet : material.sheets()) {
                for (var piece : sheet.pieces()) {
                    left.merge(piece.label(), -1, Integer::sum);
                    checkPiece(piece, lines, material.material());
                }
            }
        }
        left.forEach((label, count) -> {
            if (count != 0) {
                faults.add("Line '" + label + "' has " + Math.abs(count) + (count > 0 ? " missing." : " too many."));
            }
        });
    }

    private void checkPiece(PlacedPiece piece, Map<String, CutLine> lines, Material material) {
        var line = lines.get(piece.label());
        if (line == null || !line.material().equals(material)) {
            faults.add("Piece '" + piece.label() + "' does not belong on a sheet of '" + material.name() + "'.");
            return;
        }
        int length = SheetUnit.up(line.part().roughLength());
        int width = SheetUnit.up(line.part().roughWidth());
        int along = piece.turned() ? width : length;
        int across = piece.turned() ? length : width;
        if (piece.area().length() != along || piece.area().width() != across) {
            faults.add("Piece '" + piece.label() + "' at " + piece.area() + " is not " + along + " x " + across + ".");
        }
        if (piece.turned() && material.grain() == Grain.ALONG_LENGTH) {
            faults.add("Piece '" + piece.label() + "' lies across the grain.");
        }
    }

    private void checkSheets() {
        int kerf = SheetUnit.up(stock.saw().kerf());
        for (var material : plan.materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                var sheet = material.sheets().get(i);
                var name = material.material().name() + " " + (i + 1) + ": ";
                new SheetVerifier(sheet.board(), sheet.trimmed(stock.saw()), kerf, stock.keep())
                        .faults(sheet)
                        .forEach(fault -> faults.add(name + fault));
            }
        }
    }
}
