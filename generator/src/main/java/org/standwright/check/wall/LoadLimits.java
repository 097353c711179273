package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.standwright.check.wall.statics.WallScrew;

/**
 * The most that strips and holders may hold by the rules of their screws, of riding out and of the hangers' screws.
 *
 * <p>A holder's is that of the things in it, all other holders of its strips filled in the same proportion: so much may be
 * in all of them at once. Boards stay as they are, and what is added is where the things are. A strip's is that of
 * everything on it, spread evenly over its length, as far out and as deep as the worst holder on it, or, where nothing
 * hangs, 150 mm out and as deep as the strip is high.
 *
 * <p>There is none where no source rates the screws: in steel studs, in masonry, in strips of MDF or particleboard. Flat
 * heads drawn through the strip are not rated and limit nothing; hangers' screws count by the formulas even with less
 * thread than those rate.
 *
 * @param strips by their labels, wall by wall, row by row
 * @param holders by their names, in the order of the design
 */
public record LoadLimits(Map<String, MostHung> strips, Map<String, MostHung> holders) {
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
        var factors = new ArrayList<Double>();
        rated.forEach(strip -> factors.add(factor(strip)));
        var most = new LinkedHashMap<String, MostHung>();
        for (var body : bodies) {
            for (int i = 0; i < rated.size(); i++) {
                if (holds(rated.get(i), body)) {
                    double factor = factors.get(i);
                    var limit = new MostHung(
                            body.thingsAt(factor),
                            at(rated.get(i), factor).use().weakest().words());
                    most.merge(body.name(), limit, MostHung::or);
                }
            }
            if (most.containsKey(body.name())) {
                for (var limit : own(wall, body)) {
                    most.merge(body.name(), limit, MostHung::or);
                }
            }
        }
        return most;
    }

    private static boolean holds(RatedStrip strip, HungBody body) {
        return strip.load().held().stream().anyMatch(piece -> piece.body().equals(body));
    }

    /** How many times what hangs on the strip its screws hold. */
    private static double factor(RatedStrip strip) {
        return Largest.of(factor -> at(strip, factor).use().most() <= 1);
    }

    private static RatedStrip at(RatedStrip strip, double factor) {
        var held = strip.load().held().stream()
                .map(piece -> new HeldBy(piece.body().times(factor), piece.strip(), piece.along(), piece.share()))
                .toList();
        return new RatedStrip(strip.load().carrying(held), strip.screw());
    }

    /** By its hanger's screws, and by riding out. */
    private static List<MostHung> own(HungWall wall, HungBody body) {
        var limits = new ArrayList<MostHung>();
        new HolderScrews(wall, body.load().holder())
                .hanger()
                .filter(screw -> screw.withdrawal() > 0)
                .ifPresent(screw -> limits.add(new MostHung(
                        body.thingsAt(Largest.of(factor -> hangerUse(wall, body.times(factor), screw) <= 1)),
                        "the hanger's screws give")));
        rides(wall, body).ifPresent(mass -> limits.add(new MostHung(mass, "it rides up its bevel and out")));
        return limits;
    }

    private static double hangerUse(HungWall wall, HungBody body, WallScrew screw) {
        int count = new HolderScrews(wall, body.load().holder()).overStrips();
        return screw.use(body.section().hanger(body.hanging(), count).perScrew())
                .most();
    }

    /** Of things, kg, beyond which it rides out; empty where no mass of things makes it. */
    private static OptionalDouble rides(HungWall wall, HungBody body) {
        double most = Largest.of(factor -> fits(wall, body.times(factor)));
        return most < Largest.BEYOND_ALL ? OptionalDouble.of(body.thingsAt(most)) : OptionalDouble.empty();
    }

    private static boolean fits(HungWall wall, HungBody body) {
        var riding = new RideOut(wall, body);
        return riding.ratio() <= riding.limit();
    }
}
