package org.standwright.check;

import java.util.List;
import org.standwright.design.Joint;
import org.standwright.design.built.Stand;

/** Screws into a panel's edge carry no rated withdrawal; nothing here hangs on them. */
final class EdgeScrews implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        var housed = stand.design().carcass().joint() instanceof Joint.Housed;
        return List.of(new Finding(
                Severity.NOTE,
                "edge-screws",
                housed ? "back" : "carcass",
                housed
                        ? "The back's screws go into panel edges and are not rated: the glued rabbets carry, the screws "
                                + "only hold while the glue sets."
                        : "What joins the panels goes into their edges and is not rated. Nothing may hang on it: the "
                                + "panels stand on each other, and the back, glued on, keeps them square.",
                "common practice, no source"));
    }
}
