package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Material;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.Stock;

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
        requireOwnLabels(cutList);
        var materials = new ArrayList<MaterialPlan>();
        linesByMaterial(cutList).forEach((material, lines) -> materials.add(plan(stock, material, lines)));
        var plan = new SheetPlan(stock.saw(), materials);
        var faults = SheetPlanVerifier.faults(stock, cutList, plan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the sheet plan cannot be cut as drawn: " + String.join(" ", faults));
        }
        return plan;
    }

    private static MaterialPlan plan(Stock stock, Material material, List<CutLine> lines) {
        var sheet = stock.sheetOf(material);
        var job = PackingJob.of(sheet, stock.saw(), lines);
        int bound = LowerBound.of(job);
        var sheets = Packer.pack(job, bound).stream()
                .map(tree -> Sawing.of(job, tree))
                .toList();
        return new MaterialPlan(sheet, sheets, bound);
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
