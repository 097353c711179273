package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Material;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.sawing.Sawing;
import org.standwright.sheet.search.Found;
import org.standwright.sheet.search.Packing;
import org.standwright.sheet.search.Search;

/**
 * Lays a cut list on sheets so that every cut of the saw runs from edge to edge: with as little cost as it finds, then
 * with the largest offcut, then with the fewest set-ups of the saw. The same cut list and stock give the same plan, and
 * no plan leaves here that {@link SheetPlanVerifier} finds fault with.
 */
public final class SheetPlanner {
    private SheetPlanner() {}

    /** With the usual effort; as {@link #plan(Stock, CutList, Effort)}. */
    public static SheetPlan plan(Stock stock, CutList cutList) {
        return plan(stock, cutList, Effort.USUAL);
    }

    /**
     * A plan for each sheet material, in the order of the cut list; bars are not planned.
     *
     * @throws ImpossiblePlanException if no plan can do it, such as {@link PartTooLargeException}
     * @throws IllegalArgumentException if two lines have one label
     */
    public static SheetPlan plan(Stock stock, CutList cutList, Effort effort) {
        return plan(stock, cutList, effort, () -> false);
    }

    /**
     * The same, as long as somebody wants it.
     *
     * @param givenUp asked now and then
     * @throws java.util.concurrent.CancellationException once it was given up
     */
    public static SheetPlan plan(Stock stock, CutList cutList, Effort effort, BooleanSupplier givenUp) {
        cutList.requireOwnLabels();
        var materials = new ArrayList<MaterialPlan>();
        cutList.linesBySheetMaterial()
                .forEach((material, lines) ->
                        materials.add(plan(stock, material, lines, cutList, effort.budget(givenUp))));
        var plan = new SheetPlan(stock.saw(), materials, effort.isRepeatable());
        var faults = SheetPlanVerifier.faults(stock, cutList, plan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the sheet plan cannot be cut as drawn: " + String.join(" ", faults));
        }
        return plan;
    }

    /** What no plan can do without, material by material, without planning. Throws as {@link #plan} does. */
    public static List<Least> least(Stock stock, CutList cutList) {
        var least = new ArrayList<Least>();
        cutList.linesBySheetMaterial().forEach((material, lines) -> {
            var work = Work.of(stock, lines, cutList.cutting());
            least.add(new Least(material, work.goal(), LowerBound.of(work.job())));
        });
        return least;
    }

    private static MaterialPlan plan(
            Stock stock, Material material, List<CutLine> lines, CutList cutList, Budget budget) {
        var work = Work.of(stock, lines, cutList.cutting());
        long bound = LowerBound.of(work.job());
        var found = found(work, bound, budget);
        // lanes come in order, and of equals the first is taken
        return found.answers().stream()
                .map(packing -> sawn(material, work, packing, found.bound(), cutList))
                .min(Comparator.comparingLong(
                                (MaterialPlan plan) -> plan.proof().reached())
                        .thenComparingLong(plan -> -largestOffcut(plan))
                        .thenComparingInt(plan -> plan.setUps().size()))
                .orElseThrow();
    }

    private static Found found(Work work, long bound, Budget budget) {
        try {
            return Search.run(work.job(), bound, budget, better -> {});
        } catch (ScarceStockException e) {
            throw new ImpossiblePlanException(
                    "/stock/sheets",
                    String.format(
                            Locale.ROOT,
                            "no way was found to lay all pieces on the boards of '%s' that are there: pieces of %.2f m²"
                                    + " found no place.",
                            work.sheets().get(0).material().name(),
                            SheetUnit.squareMetres(e.missingArea())),
                    List.of("Have more boards, or leave out a count."));
        }
    }

    private static MaterialPlan sawn(Material material, Work work, Packing packing, long bound, CutList cutList) {
        var sheets = Sawing.of(
                work.sheets(),
                packing.boards(),
                work.blocks(),
                work.saw(),
                work.keep(),
                cutList.cutting().later());
        return new MaterialPlan(material, sheets, new Proof(work.goal(), packing.cost(), bound));
    }

    private static long largestOffcut(MaterialPlan plan) {
        return plan.sheets().stream()
                .flatMap(sheet -> sheet.offcuts().stream())
                .mapToLong(Area::size)
                .max()
                .orElse(0);
    }
}
