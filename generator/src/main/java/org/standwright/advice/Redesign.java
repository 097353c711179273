package org.standwright.advice;

import java.util.List;
import java.util.function.UnaryOperator;
import org.standwright.design.Bay;
import org.standwright.design.CarcassPlan;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.design.StockPlan;
import org.standwright.design.Worktop;
import org.standwright.part.SheetGood;

/** Copies of a design in which one decision differs. */
final class Redesign {
    private Redesign() {}

    static StandDesign planned(StandDesign from, Place place, Plan plan) {
        return of(from, place, plan, from.carcass(), from.worktop(), from.bays(), from.drawers(), from.stock());
    }

    static StandDesign divided(StandDesign from, List<Bay> bays) {
        return of(from, from.place(), from.plan(), from.carcass(), from.worktop(), bays, from.drawers(), from.stock());
    }

    static StandDesign backIn(StandDesign from, int pieces) {
        var now = from.carcass();
        var carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), now.joint(), pieces);
        return of(from, from.place(), from.plan(), carcass, from.worktop(), from.bays(), from.drawers(), from.stock());
    }

    /** Every sheet changed, wherever it is used. */
    static StandDesign of(StandDesign from, UnaryOperator<SheetGood> sheets) {
        var carcass = from.carcass();
        var worktop = from.worktop();
        var drawers = from.drawers();
        return of(
                from,
                from.place(),
                from.plan(),
                new CarcassPlan(
                        sheets.apply(carcass.sheet()),
                        sheets.apply(carcass.back()),
                        carcass.housing(),
                        carcass.fit(),
                        carcass.joint(),
                        carcass.backPieces()),
                new Worktop(sheets.apply(worktop.sheet()), worktop.layers(), worktop.overhang(), worktop.plate()),
                from.bays(),
                new DrawerPlan(
                        sheets.apply(drawers.box()),
                        sheets.apply(drawers.bottom()),
                        sheets.apply(drawers.front()),
                        drawers.hang(),
                        drawers.mount(),
                        drawers.gap(),
                        drawers.bumper(),
                        drawers.grip(),
                        drawers.rounding()),
                BoardsAtHand.of(from.stock(), sheets));
    }

    private static StandDesign of(
            StandDesign from,
            Place place,
            Plan plan,
            CarcassPlan carcass,
            Worktop worktop,
            List<Bay> bays,
            DrawerPlan drawers,
            StockPlan stock) {
        return new StandDesign(
                from.name(),
                from.unit(),
                from.machine(),
                place,
                from.workingHeight(),
                plan,
                from.layout(),
                from.support(),
                carcass,
                worktop,
                from.cutouts(),
                bays,
                drawers,
                from.edges(),
                from.screws(),
                from.saw(),
                stock,
                from.cutting(),
                from.savings());
    }
}
