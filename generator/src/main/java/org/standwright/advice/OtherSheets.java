package org.standwright.advice;

import java.util.function.UnaryOperator;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.part.SheetGood;

/** A design in which sheets are changed wherever they are used. */
final class OtherSheets {
    private OtherSheets() {}

    static StandDesign of(StandDesign from, UnaryOperator<SheetGood> sheets) {
        var carcass = from.carcass();
        var worktop = from.worktop();
        var drawers = from.drawers();
        return Redesign.of(from)
                .carcass(carcass.of(sheets.apply(carcass.sheet()), sheets.apply(carcass.back())))
                .worktop(new Worktop(
                        sheets.apply(worktop.sheet()), worktop.layers(), worktop.overhang(), worktop.plate()))
                .drawers(drawers.of(
                        sheets.apply(drawers.box()), sheets.apply(drawers.bottom()), sheets.apply(drawers.front())))
                .stock(BoardsAtHand.of(from.stock(), sheets))
                .done();
    }
}
