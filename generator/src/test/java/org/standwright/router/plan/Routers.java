package org.standwright.router.plan;

import java.util.Optional;
import org.standwright.design.kit.Router;

/** Routers for tests. */
public final class Routers {
    private Routers() {}

    /** With a bit of 1/4 in and a margin of 1/16 in, as the files take it. */
    public static Router usual() {
        return of(6.35, 1.5875);
    }

    public static Router of(double bit, double margin) {
        return new Router(bit, margin, 3, 0.2, 0, Optional.of(new Router.Tabs(3, 8)), Router.Relief.DOG_BONE, 6);
    }
}
