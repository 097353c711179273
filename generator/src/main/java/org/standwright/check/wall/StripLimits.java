package org.standwright.check.wall;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.standwright.check.wall.statics.Hanging;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.built.Strip;
import org.standwright.unit.Gravity;

/** The most that strips hold within one stud spacing, at the worst place. */
record StripLimits(HungWall wall, List<RatedStrip> rated) {
    /** Centre of mass before a strip that nothing hangs on, mm: our own choice. */
    private static final double USUAL_OUT = 150;

    /** N. */
    private static final double ONE = 1;

    Map<String, MostHung> all() {
        var most = new LinkedHashMap<String, MostHung>();
        if (!section().isRated()) {
            return most;
        }
        var screws = new StripScrew(wall);
        for (var cleated : wall.wall().walls()) {
            screws.into(cleated.wall().framing())
                    .ifPresent(screw -> cleated.strips()
                            .forEach(strip -> most.put(
                                    strip.label(),
                                    most(strip, spacing(cleated.wall().framing(), strip), screw))));
        }
        return most;
    }

    private CleatSection section() {
        return new CleatSection(wall.design().cleat());
    }

    /** Of listed studs the least between two of the strip. */
    private static double spacing(Framing framing, Strip strip) {
        var studs = strip.studs();
        return framing.spacing()
                .orElseGet(() -> IntStream.range(1, studs.size())
                        .mapToDouble(i -> studs.get(i) - studs.get(i - 1))
                        .min()
                        .orElseThrow());
    }

    private MostHung most(Strip strip, double spacing, WallScrew screw) {
        var screws = new StudScrews(section(), strip);
        var one = screws.highest(hanging(strip), new Stretches(strip.studs(), strip.along(), spacing).most());
        double most = Largest.of(
                newtons -> screw.use(screws.own().plus(one.times(newtons))).most() <= 1);
        var weakest = screw.use(screws.own().plus(one.times(most))).weakest();
        return new MostHung(most / Gravity.STANDARD, weakest.words());
    }

    /** Any weight as far out and as deep as the worst that hangs on it. */
    private Hanging hanging(Strip strip) {
        return rated.stream()
                .filter(other -> other.label().equals(strip.label()))
                .flatMap(other -> other.load().held().stream())
                .map(piece -> piece.body().hanging())
                .max(Comparator.comparingDouble(Hanging::ratio))
                .map(worst -> worst.weighing(ONE))
                .orElseGet(() -> new Hanging(
                        ONE,
                        USUAL_OUT,
                        section().drop(wall.design().cleat().height()),
                        section().bevel()));
    }
}
