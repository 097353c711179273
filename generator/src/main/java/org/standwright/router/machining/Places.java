package org.standwright.router.machining;

import java.util.Collection;
import java.util.stream.Collectors;
import org.standwright.geom.Vec2;

/** Places in the part's frame in words. */
final class Places {
    private static final int MOST = 6;

    private Places() {}

    /** '(100, 50)'. */
    static String of(Vec2 at) {
        return "(" + Mm.of(at.x()) + ", " + Mm.of(at.y()) + ")";
    }

    /** The first few of them. */
    static String of(Collection<Vec2> places) {
        var some = places.stream().limit(MOST).map(Places::of).collect(Collectors.joining(", "));
        return places.size() > MOST ? some + " and " + (places.size() - MOST) + " more" : some;
    }
}
