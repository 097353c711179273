package org.standwright.design.carcass;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;

/** Whether a back in two pieces finds a partition to meet on. */
public final class BackFit {
    /** Wood that each piece lies on where two meet, mm; common practice, no source. */
    private static final double BEARING = 7;

    private BackFit() {}

    /** @throws ImpossibleDesignException where there is no partition, or one too thin for two edges */
    public static void check(StandDesign design) {
        if (design.carcass().backPieces() == 1) {
            return;
        }
        double panel = design.carcass().sheet().material().thickness();
        if (design.bays().size() == 1) {
            throw refusal("but this carcass has one bay.");
        }
        if (Grid.less(panel, 2 * BEARING)) {
            var units = design.unit();
            throw refusal("and each lies on half of its edge, " + units.length(BEARING) + " or more; it is "
                    + units.length(panel) + " thick.");
        }
    }

    private static ImpossibleDesignException refusal(String reason) {
        return new ImpossibleDesignException(
                "/carcass/backPieces",
                "Two pieces of a back meet on a partition between bays, " + reason,
                List.of("Make it 1: the back in one piece."));
    }
}
