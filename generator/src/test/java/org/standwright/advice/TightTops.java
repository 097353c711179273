package org.standwright.advice;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.planerStand;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Savings;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.SheetGood;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.unit.Money;

/**
 * Stands 720 wide and 560 deep whose worktop's two layers, 720 x 580 and cut 3 over all round 726 x 586, come from sheets
 * of their own: one above the other they take 580 + 586, a kerf of 3.2 and trims of 5 and 5, 1179.2 in all.
 */
final class TightTops {
    /** 7.7 short for both layers: they fit when each is 4 less deep, then 1171.2, but not at 3, then 1173.2. */
    static final SheetGood SHORT_BY_4 = Designs.sheet("top", 18, 745, 1171.5);
    /** For one layer, however much depth is given up. */
    static final SheetGood SINGLE = Designs.sheet("top", 18, 745, 640);

    private TightTops() {}

    static StandDesign of(SheetGood top, Savings savings) {
        return of(top, savings, draft -> {});
    }

    static StandDesign of(SheetGood top, Savings savings, Consumer<Draft> change) {
        return Draft.of(planerStand(), draft -> {
            draft.bays = List.of(bay(equal(3)));
            draft.worktop = new Worktop(top, 2, draft.worktop.overhang(), draft.worktop.plate());
            draft.savings = Optional.of(savings);
            change.accept(draft);
        });
    }

    static Savings depth(double less) {
        return savings(give(less), give(0), 0, List.of());
    }

    static Savings savings(Savings.Give depth, Savings.Give width, int drawers, List<Savings.OtherSheet> sheets) {
        return new Savings(width, depth, give(0), drawers, sheets, false, List.of());
    }

    static Savings.Give give(double less) {
        return new Savings.Give(less, 0);
    }

    static SheetGood priced(SheetGood sheet, String price) {
        return new SheetGood(
                sheet.material(), sheet.length(), sheet.width(), sheet.nominal(), Optional.of(Money.parse(price)));
    }

    /** Every board at one price. */
    static void priceAll(Draft draft, String price, SheetGood top) {
        var all = OtherSheets.of(
                Draft.of(planerStand(), other -> other.worktop = draft.worktop), sheet -> priced(sheet, price));
        draft.carcass = all.carcass();
        draft.drawers = all.drawers();
        draft.worktop = new Worktop(top, 2, draft.worktop.overhang(), draft.worktop.plate());
    }

    static SheetPlan plan(StandDesign design) {
        return SheetPlanner.plan(Stock.of(design), cutList(design));
    }

    static CutList cutList(StandDesign design) {
        return CutList.of(StandBuilder.build(design));
    }

    static Advice advice(StandDesign design) {
        return SavingSearch.of(StandBuilder.build(design), cutList(design), plan(design))
                .orElseThrow();
    }
}
