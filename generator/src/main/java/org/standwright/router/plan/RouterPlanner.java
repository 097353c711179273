package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.function.BooleanSupplier;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Router;
import org.standwright.router.RouterPlan;
import org.standwright.router.RouterPlan.MaterialSheets;
import org.standwright.router.RouterVerifier;
import org.standwright.sheet.Stock;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;

/**
 * Lays a cut list on boards for a router, which goes round any part at any place: with as little cost as it finds, then
 * with the largest rest. The same cut list and stock give the same plan, and no plan leaves here that {@link
 * RouterVerifier} finds fault with.
 */
public final class RouterPlanner {
    private RouterPlanner() {}

    /** With the usual effort. */
    public static RouterPlan plan(Stock stock, CutList cutList, Router router) {
        return plan(stock, cutList, router, Effort.USUAL, () -> false);
    }

    /**
     * Boards for each sheet material, in the order of the cut list, as long as somebody wants it.
     *
     * @param givenUp asked now and then
     * @throws ImpossiblePlanException if no plan can do it
     * @throws IllegalArgumentException if two lines have one label
     * @throws java.util.concurrent.CancellationException once it was given up
     */
    public static RouterPlan plan(Stock stock, CutList cutList, Router router, Effort effort, BooleanSupplier givenUp) {
        cutList.requireOwnLabels();
        var materials = new ArrayList<MaterialSheets>();
        cutList.linesBySheetMaterial().forEach((material, lines) -> {
            var work = RouterWork.of(stock, lines, cutList.cutting(), router);
            materials.add(
                    new MaterialSheets(material, best(work, effort, givenUp).sheets()));
        });
        var plan = new RouterPlan(router, materials);
        var faults = RouterVerifier.faults(stock, cutList, router, plan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the router plan cannot be cut as drawn: " + String.join(" ", faults));
        }
        return plan;
    }

    /** Of every part as its rectangle, or of pairs where that saves a board or leaves the larger rest. */
    private static Laid best(RouterWork single, Effort effort, BooleanSupplier givenUp) {
        var laid = new ArrayList<Laid>();
        var ways = single.ways();
        var each = new Effort(
                effort.rounds(), effort.offcutRounds(), effort.seconds() / ways.size(), effort.isRepeatable());
        double missing = Double.POSITIVE_INFINITY;
        for (var work : ways) {
            try {
                laid.add(Laid.of(work, each, givenUp));
            } catch (ScarceStockException e) {
                missing = Math.min(missing, e.missingArea());
            }
        }
        double least = missing;
        return laid.stream()
                .reduce((a, b) -> b.isBetter(a) ? b : a)
                .orElseThrow(() -> RouterLimits.scarce(single, least));
    }
}
