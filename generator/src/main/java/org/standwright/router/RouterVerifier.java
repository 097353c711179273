package org.standwright.router;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Router;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.router.RouterPlan.MaterialSheets;
import org.standwright.sheet.Stock;
import org.standwright.sheet.StockVerifier;

/**
 * Judges a finished router plan by its outlines alone, knowing nothing of how it was found: every part is there as often
 * as the cut list says, on a board of its material that is in stock and of the thickness that the design counts on, with
 * its grain along the board's, the right face up, and clear of its neighbours and of the board's edge.
 */
public final class RouterVerifier {
    private final Stock stock;
    private final CutList cutList;
    private final RouterPlan plan;
    private final Map<String, CutLine> lines = new LinkedHashMap<>();
    private final Map<String, Integer> left = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    private RouterVerifier(Stock stock, CutList cutList, RouterPlan plan) {
        this.stock = stock;
        this.cutList = cutList;
        this.plan = plan;
        for (var line : cutList.sheetLines()) {
            lines.put(line.label(), line);
            left.merge(line.label(), line.count(), Integer::sum);
        }
    }

    /** One sentence for each fault, none if the plan is sound. */
    public static List<String> faults(Stock stock, CutList cutList, Router router, RouterPlan plan) {
        var verifier = new RouterVerifier(stock, cutList, plan);
        if (!plan.router().equals(router)) {
            verifier.faults.add("The plan is for another router.");
        }
        verifier.checkStock();
        plan.materials().forEach(material -> verifier.check(material, router));
        verifier.left.forEach(verifier::checkCount);
        return List.copyOf(verifier.faults);
    }

    private void checkStock() {
        faults.addAll(StockVerifier.faults(
                stock,
                plan.materials().stream().map(MaterialSheets::material).toList(),
                plan.materials().stream()
                        .flatMap(material -> material.sheets().stream())
                        .map(RoutedSheet::from)));
    }

    private void checkCount(String label, int count) {
        if (count != 0) {
            faults.add("Line '" + label + "' has " + Math.abs(count) + (count > 0 ? " missing." : " too many."));
        }
    }

    private void check(MaterialSheets material, Router router) {
        var name = material.material().name();
        for (int i = 0; i < material.sheets().size(); i++) {
            var sheet = material.sheets().get(i);
            var board = name + " " + (i + 1) + ": ";
            checkBoard(sheet, board);
            sheet.pieces().forEach(piece -> check(piece, sheet, material.material()));
            ClearanceVerifier.faults(sheet, router.spacing()).forEach(fault -> faults.add(board + fault));
        }
        var groups = cutList.together(material.material());
        BlockVerifier.faults(material.sheets(), groups, router.spacing())
                .forEach(fault -> faults.add(name + ": " + fault));
    }

    private void checkBoard(RoutedSheet sheet, String board) {
        var from = sheet.from();
        if (sheet.pieces().isEmpty()) {
            faults.add(board + "nothing is cut from it.");
        }
        if (!stock.mates(from)) {
            faults.add(board
                    + String.format(
                            Locale.ROOT,
                            "'%s' is %.2f mm thick, but its parts count on %.2f to %.2f mm.",
                            from.name(),
                            from.thickness(),
                            from.thinnest(stock.fit()),
                            from.thickest(stock.fit())));
        }
    }

    private void check(RoutedPiece piece, RoutedSheet sheet, Material material) {
        var label = piece.label();
        left.merge(label, -1, Integer::sum);
        var line = lines.get(label);
        if (line == null
                || !line.material().equals(material)
                || !sheet.from().material().equals(material)) {
            faults.add("Piece '" + label + "' does not belong on a sheet of '" + material.name() + "'.");
            return;
        }
        if (!piece.part().equals(line.part())) {
            faults.add("Piece '" + label + "' is not the part of its line.");
        }
        boolean free =
                material.grain() == Grain.NONE || cutList.cutting().free().contains(label);
        if (!free && piece.lie().quarters() % 2 != 0) {
            faults.add("Piece '" + label + "' lies across the grain.");
        }
        if (piece.lie().overturned() != (FaceUp.of(line.part()) == Face.BENCH)) {
            faults.add("Piece '" + label + "' has the wrong face up.");
        }
    }
}
