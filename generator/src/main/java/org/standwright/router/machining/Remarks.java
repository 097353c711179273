package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.design.kit.Router;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/** What there is to say about what does not come out as designed, equal holes in one sentence. */
final class Remarks {
    private final Router router;
    private final Sizes sizes;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, List<Vec2>> holes = new LinkedHashMap<>();

    Remarks(Router router, Sizes sizes) {
        this.router = router;
        this.sizes = sizes;
    }

    List<String> all() {
        var all = new ArrayList<>(lines);
        holes.forEach((words, places) -> all.add(places.size() + " x " + words + ", at " + Places.of(places)));
        return all;
    }

    void narrow(Sunk sunk, double widest) {
        lines.add(what(sunk) + " is narrower than the bit of " + Mm.of(router.bit())
                + " mm: cut it with a bit of at most " + sizes.bore(widest) + ", or with a saw or chisel");
    }

    void narrowInPlaces(Sunk sunk) {
        lines.add(what(sunk) + " is narrower than the bit of " + Mm.of(router.bit())
                + " mm in places: finish those with a narrower bit or by hand");
    }

    void stopped(Channel channel, Reliefs reliefs) {
        var what = "stopped channel at "
                + Places.of(new Vec2(channel.area().x0(), channel.area().y0()));
        reliefs.roundAt()
                .ifPresent(at -> lines.add(what + ": round end or notched mate: round or notch the mate's corners by "
                        + Mm.of(router.bit() / 2) + " mm, or square the ends by hand, at " + at));
        if (reliefs.isRelieved()) {
            lines.add(what + ": its square ends are relieved, so that a square mate goes in" + seen());
        }
    }

    void corners(String purpose, Reliefs reliefs) {
        if (reliefs.isRelieved() && !seen().isEmpty()) {
            lines.add(purpose + ": its corners are relieved" + seen());
        }
        reliefs.roundAt()
                .ifPresent(at -> lines.add(purpose + ": corners stay round by " + Mm.of(router.bit() / 2)
                        + " mm, without room for relief or by choice: round or notch the mate, or square them by hand, at "
                        + at));
    }

    void radius(Pocket pocket, Sunk sunk) {
        if (pocket.radius() > 0 && Grid.less(pocket.radius(), router.bit() / 2) && hasRounded(sunk)) {
            lines.add(what(sunk) + " has inside radii of " + Mm.of(pocket.radius()) + " mm, smaller than the bit's "
                    + Mm.of(router.bit() / 2) + " mm: finish them with a bit of at most " + Mm.of(2 * pocket.radius())
                    + " mm or by hand, or make the mate rounder");
        }
    }

    void countersink(Hole hole, Recess.Countersink cone) {
        count(
                hole.purpose() + ": bored only; countersink it to " + sizes.of(cone.diameter()) + " at "
                        + Mm.of(cone.angle()) + " degrees from the " + HandWork.face(hole.face()),
                hole);
    }

    void centreMark(Hole hole) {
        var depth = hole.depth().isEmpty()
                ? " through"
                : ", " + sizes.of(hole.depth().getAsDouble()) + " deep";
        count(
                hole.purpose() + ": centre mark only; drill " + sizes.bore(hole.diameter()) + depth + " from the "
                        + HandWork.face(hole.face()),
                hole);
    }

    /** A T-bone's circle has its middle on a side: half of it lies beyond, where no mate covers it. */
    private String seen() {
        return router.relief() == Router.Relief.T_BONE
                ? "; a half-moon of radius " + Mm.of(Corner.WIDER * router.bit() / 2) + " mm stays visible beside it"
                : "";
    }

    private void count(String words, Hole hole) {
        holes.computeIfAbsent(words, key -> new ArrayList<>()).add(new Vec2(hole.x(), hole.y()));
    }

    private static boolean hasRounded(Sunk sunk) {
        for (int i = 0; i < sunk.count(); i++) {
            if (sunk.isRounded(i)) {
                return true;
            }
        }
        return false;
    }

    private static String what(Sunk sunk) {
        var bounds = sunk.outline().bounds();
        return sunk.feature().purpose() + " at " + Places.of(new Vec2(bounds.x0(), bounds.y0()));
    }
}
