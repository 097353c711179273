package org.standwright.check.wall;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.check.wall.statics.Hanging;
import org.standwright.check.wall.statics.StudShares;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.built.Strip;
import org.standwright.unit.Gravity;

/** The most that strips hold, spread evenly over their lengths. */
record StripLimits(HungWall wall, List<RatedStrip> rated) {
    /** Centre of mass before a strip that nothing hangs on, mm: our own choice. */
    private static final double USUAL_OUT = 150;

    private static final double ANY = 1000;

    Map<String, MostHung> all() {
        var most = new LinkedHashMap<String, MostHung>();
        if (!section().isRated()) {
            return most;
        }
        var screws = new StripScrew(wall);
        for (var cleated : wall.wall().walls()) {
            screws.into(cleated.wall().framing())
                    .ifPresent(screw -> cleated.strips().forEach(strip -> most.put(strip.label(), most(strip, screw))));
        }
        return most;
    }

    private CleatSection section() {
        return new CleatSection(wall.design().cleat());
    }

    private MostHung most(Strip strip, WallScrew screw) {
        double share = new StudShares(
                        strip.studs(), strip.along().from(), strip.along().to())
                .most();
        var load = new StudScrews(section(), strip).highest(hanging(strip), share);
        var use = screw.use(load);
        return new MostHung(ANY / use.most() / Gravity.STANDARD, use.weakest().words());
    }

    /** Any weight as far out and as deep as the worst that hangs on it. */
    private Hanging hanging(Strip strip) {
        return rated.stream()
                .filter(other -> other.label().equals(strip.label()))
                .flatMap(other -> other.load().held().stream())
                .map(piece -> piece.body().hanging())
                .max(Comparator.comparingDouble(Hanging::ratio))
                .map(worst -> worst.weighing(ANY))
                .orElseGet(() -> new Hanging(
                        ANY,
                        USUAL_OUT,
                        section().drop(wall.design().cleat().height()),
                        section().bevel()));
    }
}
