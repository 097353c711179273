package org.standwright.make;

import java.util.LinkedHashMap;
import java.util.stream.Stream;
import org.standwright.check.wall.HungWall;
import org.standwright.check.wall.LoadLimits;
import org.standwright.check.wall.MostHung;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.wall.WallLabels;
import org.standwright.solid.AssemblySolids;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** What each strip and holder may carry, as it is printed on drawings: '\u2264 42 kg'. */
final class Limits {
    private static final double FINE = 20;

    private Limits() {}

    static WallLabels of(CleatWall wall, AssemblySolids solids) {
        var limits = LoadLimits.of(HungWall.of(wall, solids));
        var words = new LinkedHashMap<String, String>();
        var units = wall.design().unit();
        var weakest = new LinkedHashMap<String, String>();
        Stream.of(limits.strips(), limits.holders())
                .flatMap(map -> map.entrySet().stream())
                .forEach(most -> {
                    words.put(most.getKey(), words(most.getValue(), units));
                    weakest.put(most.getKey(), most.getValue().weakest());
                });
        return new WallLabels(words, weakest);
    }

    /** Rounded down: to a tenth of the maker's own unit, from twenty on to a whole one. */
    private static String words(MostHung most, Units units) {
        double unit = Measure.MASS.of(1, units.unitOf(Measure.MASS));
        double step = most.mass() < FINE * unit ? unit / 10 : unit;
        return "\u2264 " + units.mass(Math.floor(most.mass() / step + 1e-9) * step);
    }
}
