package org.standwright.make;

import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.advice.SavingSearch;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.sheet.SheetPlan;

/** What would save a sheet of each kind of furniture, where its design says what may change. */
record Saved(CutList cutList, SheetPlan plan) implements FurnitureVisitor<Optional<Advice>> {
    @Override
    public Optional<Advice> stand(Stand stand) {
        return SavingSearch.of(stand, cutList, plan);
    }

    /** Nothing of a wall may change. */
    @Override
    public Optional<Advice> wall(CleatWall wall) {
        return Optional.empty();
    }
}
