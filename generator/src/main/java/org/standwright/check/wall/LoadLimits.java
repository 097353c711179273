package org.standwright.check.wall;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The most that strips and holders may hold by all rules of strength that stop a wall.
 *
 * <p>A holder's is that of the things in it, all other holders of its strips filled in the same proportion: so much may be
 * in all of them at once. Boards stay as they are, and what is added is where the things are. A hand that leans on its front
 * is counted in, as {@link HangLip} has it.
 *
 * <p>A strip's is that of all that hangs on any stretch of it as wide as its studs are apart, at the worst place, other
 * stretches empty or as full; as far out and as deep as the worst holder on it, or, where nothing hangs, 150 mm out and as
 * deep as the strip is high.
 *
 * <p>There is none where no source rates the screws: in steel studs, in masonry, in strips of MDF or particleboard. Flat
 * heads drawn through the strip are not rated and limit nothing; hangers' screws count by the formulas even with less
 * thread than those rate.
 *
 * @param strips by their labels, wall by wall, row by row
 * @param holders by their names, in the order of the design
 */
public record LoadLimits(Map<String, MostHung> strips, Map<String, MostHung> holders) {
    /** What the figures mean, for whoever reads them on a drawing. */
    public static final String MEANING =
            "strip: the most within one stud spacing, at its worst place; holder: the most in"
                    + " it, while all others on its strips are filled in the same proportion";

    public LoadLimits {
        strips = Collections.unmodifiableMap(new LinkedHashMap<>(strips));
        holders = Collections.unmodifiableMap(new LinkedHashMap<>(holders));
    }

    public static LoadLimits of(HungWall wall) {
        var bodies = HungBody.all(wall);
        var rated = RatedStrip.of(wall, bodies);
        return new LoadLimits(new StripLimits(wall, rated).all(), holders(wall, bodies, rated));
    }

    private static Map<String, MostHung> holders(HungWall wall, List<HungBody> bodies, List<RatedStrip> rated) {
        var fills = new LinkedHashMap<RatedStrip, MostHung>();
        rated.forEach(strip -> fills.put(strip, new StripFill(strip).most()));
        var most = new LinkedHashMap<String, MostHung>();
        for (var body : bodies) {
            fills.forEach((strip, fill) -> {
                if (holds(strip, body)) {
                    var limit = new MostHung(body.thingsAt(fill.mass()), fill.weakest());
                    most.merge(body.name(), limit, MostHung::or);
                }
            });
            var own = new HolderFill(wall, body);
            most.computeIfPresent(body.name(), (name, limit) -> {
                var least = own.limits().stream().reduce(limit, MostHung::or);
                return own.steady(least);
            });
        }
        return most;
    }

    private static boolean holds(RatedStrip strip, HungBody body) {
        return strip.load().held().stream().anyMatch(piece -> piece.body().equals(body));
    }
}
