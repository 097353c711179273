package org.standwright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Material;

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
        var seen = new HashSet<Material>();
        var taken = new LinkedHashMap<StockSheet, Integer>();
        for (var material : plan.materials()) {
            if (!seen.add(material.material())) {
                faults.add("Sheets of '" + material.material().name() + "' are planned twice.");
            }
            material.sheets().forEach(sheet -> taken.merge(sheet.from(), 1, Integer::sum));
        }
        taken.forEach((sheet, count) -> {
            // equal boards may be listed more than once
            long there = stock.sheets().stream()
                    .filter(sheet::equals)
                    .mapToLong(same -> same.count().orElse(Integer.MAX_VALUE))
                    .sum();
            if (count > there) {
                faults.add("The plan takes " + count + " of sheet '" + sheet.name() + "', but "
                        + (there == 0 ? "it is not in stock." : "the stock holds " + there + "."));
            }
        });
    }

    private void checkMaterial(MaterialPlan material) {
        var sheets = material.sheets();
        var name = material.material().name();
        var groups = groups(material.material());
        var later = cutList.cutting().later();
        TogetherVerifier.faults(sheets, groups, stock.saw()).forEach(fault -> faults.add(name + ": " + fault));
        NumberVerifier.faults(sheets, later).forEach(fault -> faults.add(name + ": " + fault));
        for (int i = 0; i < sheets.size(); i++) {
            var board = name + " " + (i + 1) + ": ";
            SheetVerifier.faults(sheets.get(i), stock.saw(), stock.keep()).forEach(fault -> faults.add(board + fault));
            StageVerifier.faults(sheets.get(i), groups, stock.saw()).forEach(fault -> faults.add(board + fault));
        }
    }

    /** The groups whose pieces are of this material; one of none is judged nowhere, since its labels are no lines. */
    private List<Together> groups(Material material) {
        Set<String> labels = cutList.sheetLines().stream()
                .filter(line -> line.material().equals(material))
                .map(CutLine::label)
                .collect(Collectors.toSet());
        return cutList.cutting().together().stream()
                .filter(group -> labels.contains(group.labels().get(0)))
                .toList();
    }
}
