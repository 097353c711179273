package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.cutlist.CutList;

/**
 * Judges a finished plan by its coordinates and printed cuts alone, knowing nothing of how it was found: every piece is
 * there as often as the cut list says, at its size, with its grain along the sheet's; every sheet is in the stock and
 * can be sawn as drawn, in the order of the cuts, with the saws that are there.
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
        verifier.checkStock();
        verifier.faults.addAll(PieceVerifier.faults(stock, cutList, plan));
        plan.materials().forEach(verifier::checkMaterial);
        return List.copyOf(verifier.faults);
    }

    private void checkStock() {
        if (!plan.saw().equals(stock.saw())) {
            faults.add("The plan is for another saw than the stock's.");
        }
        faults.addAll(StockVerifier.faults(
                stock,
                plan.materials().stream().map(MaterialPlan::material).toList(),
                plan.materials().stream()
                        .flatMap(material -> material.sheets().stream())
                        .map(PlannedSheet::from)));
    }

    private void checkMaterial(MaterialPlan material) {
        var sheets = material.sheets();
        var name = material.material().name();
        var groups = cutList.together(material.material());
        var later = cutList.cutting().later();
        TogetherVerifier.faults(sheets, groups, stock.saw()).forEach(fault -> faults.add(name + ": " + fault));
        NumberVerifier.faults(sheets, later).forEach(fault -> faults.add(name + ": " + fault));
        for (int i = 0; i < sheets.size(); i++) {
            var board = name + " " + (i + 1) + ": ";
            SheetVerifier.faults(sheets.get(i), stock.saw(), stock.keep()).forEach(fault -> faults.add(board + fault));
            StageVerifier.faults(sheets.get(i), groups, stock.saw()).forEach(fault -> faults.add(board + fault));
        }
    }
}
