package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;

/**
 * All that hangs on one strip, put together at its studs: each holder gives each stud the larger of its two shares, and
 * what a holder lifts off a stud is not taken from the others (on the safe side).
 */
record StripLoad(CleatedWall wall, Strip strip, CleatSection section, List<HeldBy> held) {
    StripLoad {
        held = List.copyOf(held);
    }

    /** Strips that carry something, wall by wall, row by row. */
    static List<StripLoad> of(HungWall wall, List<HungBody> bodies) {
        var section = new CleatSection(wall.design().cleat());
        var loads = new ArrayList<StripLoad>();
        for (var cleated : wall.wall().walls()) {
            var here = bodies.stream()
                    .filter(body -> body.load().holder().wall() == cleated.number())
                    .flatMap(body -> HeldBy.of(wall, body).stream())
                    .toList();
            for (var strip : cleated.strips()) {
                var held = here.stream()
                        .filter(piece -> piece.strip().equals(strip))
                        .toList();
                if (!held.isEmpty()) {
                    loads.add(new StripLoad(cleated, strip, section, held));
                }
            }
        }
        return loads;
    }

    /** The most loaded screw at each stud, from the left. */
    List<ScrewLoad> perStud() {
        return perStud(1);
    }

    /** The same with so many times what hangs on it, hung in the same way. */
    List<ScrewLoad> perStud(double times) {
        var own = new StudScrews(section, strip).own();
        var pieces = held.stream().map(HeldBy::perStud).toList();
        return IntStream.range(0, strip.studs().size())
                .mapToObj(stud -> pieces.stream()
                        .map(loads -> loads.get(stud).times(times))
                        .reduce(own, ScrewLoad::plus))
                .toList();
    }

    /** The same strip with something else on it. */
    StripLoad carrying(List<HeldBy> other) {
        return new StripLoad(wall, strip, section, other);
    }

    /** Weight of all that hangs on it, N. */
    double weight() {
        return held.stream()
                .mapToDouble(piece -> piece.share() * piece.body().hanging().weight())
                .sum();
    }

    /** 'paint, glue'. */
    String names() {
        return held.stream().map(piece -> "'" + piece.body().name() + "'").collect(Collectors.joining(", "));
    }
}
