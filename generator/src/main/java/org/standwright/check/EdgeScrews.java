package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;

/** Screws into a panel's edge carry no rated withdrawal; nothing here hangs on them. */
final class EdgeScrews implements Rule {
    @Override
    public List<Finding> check(Stand stand, Load load) {
        return List.of(new Finding(
                Severity.NOTE,
                "edge-screws",
                "back",
                "The back's screws go into panel edges and are not rated: the glued rabbets carry, the screws only hold "
                        + "while the glue sets.",
                "common practice, no source"));
    }
}
