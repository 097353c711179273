package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Steady;
import org.standwright.design.built.Stand;

/** Steps for what keeps a stand from tipping besides its own weight. */
final class SteadySteps {
    private SteadySteps() {}

    static List<String> of(Contents<? extends Stand> contents) {
        var steady = contents.furniture().design().steady();
        var steps = new ArrayList<String>();
        if (steady.ballast() > 0) {
            steps.add("Before any drawer goes in, fix the ballast of "
                    + contents.units().mass(steady.ballast())
                    + " under the middle of the bottom, through bolted so that it cannot shift or fall.");
        }
        if (steady.interlock()) {
            steps.add(
                    "Fit the interlock of each bay as its maker says and try it: with one drawer open, no other drawer of "
                            + "that bay may open.");
        }
        if (steady.anchor() == Steady.Anchor.WALL) {
            steps.add(
                    "Put the stand in its place and fix the top of its carcass to studs or masonry before drawers are filled. "
                            + "Locate cables and pipes before you drill. Which fastener holds what is said by its maker.");
        }
        if (steady.anchor() == Steady.Anchor.FLOOR) {
            steps.add(
                    "Put the stand in its place and fix its foot to the floor before drawers are filled. Which fastener "
                            + "holds what is said by its maker.");
        }
        return steps;
    }
}
