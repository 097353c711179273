package org.standwright.design.drawer;

import java.util.List;
import java.util.Optional;
import org.standwright.design.Bay;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Hang;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Bar;

/** Stands whose drawers run on bars, for tests. */
final class Runners {
    static final Bar BAR = bar(30, 20);

    private Runners() {}

    static Bar bar(double width, double thickness) {
        return new Bar("bar " + width + " x " + thickness, width, thickness, 700, 2400, Optional.empty());
    }

    /** 720 x 560, working height 900, on casters, gap 3. */
    static StandDesign stand(Mount mount, Bar bar, Bay... bays) {
        var plain = Designs.stand(900, Designs.CASTERS, mount, List.of(bays));
        return Draft.of(plain, draft -> draft.hang(new Hang.Runners(bar)));
    }
}
