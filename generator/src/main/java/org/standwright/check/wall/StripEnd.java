package org.standwright.check.wall;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.wall.statics.StripOverhang;
import org.standwright.design.wall.Cleat;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * One end of a strip beyond its last screw, with what hangs there.
 *
 * @param name 'left end'
 * @param back from the last screw to the next inward, mm
 */
record StripEnd(StripLoad load, String name, Interval beyond, double back) {
    /** Bending stress at which it is stopped, N/mm². */
    static final double MOST = 6;

    /** Those ends on which something hangs, the left one first. */
    static List<StripEnd> of(StripLoad load) {
        var studs = load.strip().studs();
        int last = studs.size() - 1;
        var along = load.strip().along();
        return Stream.of(
                        new StripEnd(
                                load,
                                "left end",
                                new Interval(along.from(), studs.get(0)),
                                studs.get(1) - studs.get(0)),
                        new StripEnd(
                                load,
                                "right end",
                                new Interval(studs.get(last), along.to()),
                                studs.get(last) - studs.get(last - 1)))
                .filter(end -> Grid.less(0, end.force()))
                .toList();
    }

    /** What hangs beyond the last screw, N. */
    double force() {
        return load.held().stream()
                .mapToDouble(piece -> piece.share()
                        * piece.body().hanging().weight()
                        * piece.along().overlap(beyond)
                        / piece.along().length())
                .sum();
    }

    StripOverhang overhang() {
        return new StripOverhang(beyond.length(), back, cleat().shortFace(), cleat().thickness(), modulus());
    }

    double modulus() {
        return cleat().sheet().material().elasticity().along();
    }

    double stress() {
        return overhang().stress(force());
    }

    Cleat cleat() {
        return load.section().cleat();
    }
}
