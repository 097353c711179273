package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.wall.statics.Hanging;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.check.wall.statics.StudShares;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * What one strip carries of one holder.
 *
 * @param along where the holder loads the strip, from the wall's left end, mm
 * @param share of the holder, 1 where no other strip carries any of it
 */
record HeldBy(HungBody body, Strip strip, Interval along, double share) {

    /** By the lengths that it lies on them; none where no strip is behind it. */
    static List<HeldBy> of(HungWall wall, HungBody body) {
        var holder = body.load().holder();
        var loaded = body.loaded();
        var behind = wall.wall().wall(holder.wall()).rows().stream()
                .filter(row -> row.number() == holder.row())
                .flatMap(row -> row.strips().stream())
                .filter(strip -> Grid.less(0, strip.along().overlap(loaded)))
                .toList();
        double all = behind.stream()
                .mapToDouble(strip -> strip.along().overlap(loaded))
                .sum();
        return behind.stream()
                .map(strip -> new HeldBy(
                        body,
                        strip,
                        new Interval(
                                Math.max(strip.along().from(), loaded.from()),
                                Math.min(strip.along().to(), loaded.to())),
                        strip.along().overlap(loaded) / all))
                .toList();
    }

    /** What the highest screw at each stud of the strip gets of it, from the left. */
    List<ScrewLoad> perStud() {
        var shares = new StudShares(strip.studs(), along.from(), along.to());
        var counting = shares.counting();
        var loads = new ArrayList<ScrewLoad>();
        for (double stud : strip.studs()) {
            int at = counting.indexOf(stud);
            double larger = at < 0
                    ? 0
                    : Math.max(shares.byLever().get(at), shares.inOnePiece().get(at));
            loads.add(highest(share * Math.max(0, larger)));
        }
        return loads;
    }

    private ScrewLoad highest(double part) {
        return highest(body.section(), strip, body.hanging(), part);
    }

    /**
     * What the highest screw at a stud gets: of several each is drawn in step with its height over the strip's lower edge,
     * and all carry alike (own derivation).
     *
     * @param part of the whole that this stud gets
     */
    static ScrewLoad highest(CleatSection section, Strip strip, Hanging hanging, double part) {
        var heights = strip.screws();
        double top = heights.get(heights.size() - 1);
        double squares = heights.stream().mapToDouble(height -> height * height).sum();
        var one = section.pull(hanging, top).perScrew();
        return new ScrewLoad(part * one.out() * top * top / squares, part * one.sideways() / heights.size());
    }
}
