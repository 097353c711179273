package org.standwright.advice;

import org.standwright.cutlist.CutList;
import org.standwright.design.built.Stand;
import org.standwright.sheet.SheetPlan;

/** A design that was built and planned. */
record Trial(Stand stand, CutList cutList, SheetPlan plan, Cost cost) {
    Trial(Stand stand, CutList cutList, SheetPlan plan) {
        this(stand, cutList, plan, Cost.of(plan));
    }
}
