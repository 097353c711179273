package org.standwright.router.plan;

import java.util.List;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.router.RouterPlan;
import org.standwright.router.RouterVerifier;
import org.standwright.sheet.Proof.Goal;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.SheetPlanner;

/** What tests ask of router plans. */
final class Routes {
    private Routes() {}

    static RouterPlan plan(Stock stock, CutList cutList, Router router) {
        return RouterPlanner.plan(stock, cutList, router, Effort.USUAL, () -> false);
    }

    static List<String> faults(Stock stock, CutList cutList, Router router, RouterPlan plan) {
        return RouterVerifier.faults(stock, cutList, router, plan);
    }

    /** Cut by a saw whose kerf and trim are the spacing. */
    static SheetPlan sawn(Stock stock, CutList cutList, Router router) {
        return sawn(stock, cutList, router, Effort.USUAL);
    }

    static SheetPlan sawn(Stock stock, CutList cutList, Router router, Effort effort) {
        var saw = new Saw(router.spacing(), router.spacing());
        var sawn = new Stock(stock.sheets(), saw, stock.keep(), stock.fit());
        return SheetPlanner.plan(sawn, cutList, effort);
    }

    /** What the boards of a material cost in the measure of a saw's plan without prices. */
    static long cost(RouterPlan plan, int material, Goal goal) {
        return plan.materials().get(material).sheets().stream()
                .map(sheet -> sheet.from())
                .filter(board -> board.isBought())
                .mapToLong(board -> goal == Goal.SHEETS ? 1 : Math.round(board.length() * board.width()))
                .sum();
    }

    /** Boards of all materials. */
    static int boards(RouterPlan plan) {
        return plan.materials().stream()
                .mapToInt(material -> material.sheets().size())
                .sum();
    }
}
