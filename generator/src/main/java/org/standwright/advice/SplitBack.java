package org.standwright.advice;

import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;

/** The back in two pieces that meet on a partition. */
record SplitBack() implements Change {
    private static final int PIECES = 2;

    @Override
    public StandDesign in(StandDesign design) {
        return Redesign.of(design).carcass(design.carcass().backIn(PIECES)).done();
    }

    @Override
    public double size() {
        return LOOKS;
    }

    @Override
    public String words(StandDesign before) {
        return "the back in 2 pieces that meet on a partition";
    }
}
