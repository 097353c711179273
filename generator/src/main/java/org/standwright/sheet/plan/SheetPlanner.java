package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Material;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.Stock;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.sawing.Sawing;
import org.standwright.sheet.search.Search;

/**
 * Lays a cut list on sheets so that every cut of the saw runs from edge to edge. The same cut list and stock give the
 * same plan, and no plan leaves here that {@link SheetPlanVerifier} finds fault with.
 */
public final class SheetPlanner {
    private SheetPlanner() {}

    /**
     * A plan for each sheet material, in the order of the cut list; bars are not planned.
     *
     * @throws PartTooLargeException if a piece does not fit its trimmed sheet
     * @throws IllegalArgumentException if the stock lacks a material, or two lines have one label
     */
    public static SheetPlan plan(Stock stock, CutList cutList) {
        return plan(stock, cutList, Effort.USUAL);
    }

    /** As {@link #plan(Stock, CutList)} does, with more effort or less. */
    public static SheetPlan plan(Stock stock, CutList cutList, Effort effort) {
        requireOwnLabels(cutList);
        var materials = new ArrayList<MaterialPlan>();
        linesByMaterial(cutList).forEach((material, lines) -> materials.add(plan(stock, material, lines, effort)));
        var plan = new SheetPlan(stock.saw(), materials);
        var faults = SheetPlanVerifier.faults(stock, cutList, plan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the sheet plan cannot be cut as drawn: " + String.join(" ", faults));
        }
        return plan;
    }

    private static MaterialPlan plan(Stock stock, Material material, List<CutLine> lines, Effort effort) {
        var work = Work.of(stock, lines);
        long bound = LowerBound.of(work.job());
        var sheets = Search.run(work.job(), bound, effort.budget(), better -> {}).get(0).boards().stream()
                .map(tree -> Sawing.of(work.sheets().get(tree.kind()), tree.root(), lines, work.saw(), work.keep()))
                .toList();
        return new MaterialPlan(material, sheets, new Proof(work.goal(), sheets.size(), bound));
    }

    private static Map<Material, List<CutLine>> linesByMaterial(CutList cutList) {
        var lines = new LinkedHashMap<Material, List<CutLine>>();
        for (var line : cutList.sheetLines()) {
            if (line.count() > 0) {
                lines.computeIfAbsent(line.material(), none -> new ArrayList<>())
                        .add(line);
            }
        }
        return lines;
    }

    private static void requireOwnLabels(CutList cutList) {
        var seen = new HashSet<String>();
        for (var line : cutList.lines()) {
            if (!seen.add(line.label())) {
                throw new IllegalArgumentException(
                        "two lines of the cut list are labelled '" + line.label() + "'; give each its own label.");
            }
        }
    }
}
