package org.standwright.router;

import java.util.Optional;
import org.standwright.design.kit.Router;
import org.standwright.part.Part;
import org.standwright.router.machining.Machining;
import org.standwright.router.machining.Sizes;
import org.standwright.unit.Units;

/** Routers for tests. */
public final class SampleRouters {
    private SampleRouters() {}

    /** A 6 mm bit, 0.2 mm below the board, dowels of 8 mm. */
    public static Router router(Router.Relief relief) {
        return new Router(6, 1.6, 5, 0.2, 0, Optional.empty(), relief, 8);
    }

    public static Router tabbed() {
        return new Router(6.35, 1.6, 6.35, 0.2, 0, Optional.of(new Router.Tabs(3, 8)), Router.Relief.T_BONE, 8);
    }

    public static Router skinned() {
        return new Router(6, 2, 3, 0.2, 0.4, Optional.empty(), Router.Relief.DOG_BONE, 10);
    }

    /** What one does to a part with the face up that the part needs, all in millimetres. */
    public static Machining machining(Part part, Router router, double thickness) {
        return Machining.of(part, router, thickness, FaceUp.of(part), new Sizes(Units.MM));
    }
}
