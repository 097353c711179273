package org.standwright.check.fastener;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Joint;

/** Screws into a panel's edge carry no rated withdrawal; nothing here hangs on them. */
public final class EdgeScrews implements Rule {
    private static final RuleText TEXT =
            RuleText.plain("edge-screws", "What carries where screws go into edges?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var housed = stand.design().carcass().joint() instanceof Joint.Housed;
        return List.of(Finding.note(
                TEXT,
                housed ? "back" : "carcass",
                housed
                        ? "The back's screws go into panel edges and are not rated: the glued rabbets carry, the screws "
                                + "only hold while the glue sets."
                        : "What joins the panels goes into their edges and is not rated. Nothing may hang on it: the "
                                + "panels stand on each other, and the back, glued on, keeps them square."));
    }
}
