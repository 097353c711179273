package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.check.wall.statics.StudShares;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * What one strip carries of one holder.
 *
 * @param along where the holder loads the strip, from the wall's left end, mm
 * @param share of the holder, 1 where no other strip carries any of it; those of several may sum to more
 */
record HeldBy(HungBody body, Strip strip, Interval along, double share) {

    /** By {@link BridgeShares}; none where no strip is behind it. */
    static List<HeldBy> of(HungWall wall, HungBody body) {
        var behind = body.behind(wall);
        var loaded = body.loaded();
        var contacts = behind.stream()
                .map(strip -> shared(strip.along(), body.hanger()))
                .toList();
        var shares = new BridgeShares(contacts, loaded, body.load().along()).all();
        return IntStream.range(0, behind.size())
                .filter(i -> shares.get(i) > 0)
                .mapToObj(i -> new HeldBy(
                        body,
                        behind.get(i),
                        Grid.less(0, contacts.get(i).overlap(loaded))
                                ? shared(contacts.get(i), loaded)
                                : contacts.get(i),
                        shares.get(i)))
                .toList();
    }

    private static Interval shared(Interval one, Interval other) {
        return new Interval(Math.max(one.from(), other.from()), Math.min(one.to(), other.to()));
    }

    /** What the highest screw at each stud of the strip gets of it, from the left. */
    List<ScrewLoad> perStud() {
        var shares = new StudShares(strip.studs(), along.from(), along.to());
        var counting = shares.counting();
        var screws = new StudScrews(body.section(), strip);
        var loads = new ArrayList<ScrewLoad>();
        for (double stud : strip.studs()) {
            int at = counting.indexOf(stud);
            double larger = at < 0
                    ? 0
                    : Math.max(shares.byLever().get(at), shares.inOnePiece().get(at));
            loads.add(screws.highest(body.hanging(), share * Math.max(0, larger)));
        }
        return loads;
    }
}
