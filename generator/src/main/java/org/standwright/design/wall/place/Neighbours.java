package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.geom.Interval;

/** What hangs within reach of one row of one wall: all that a holder on it might meet. */
final class Neighbours {
    /** A holder that hangs, as the row sees it. */
    record Seen(Hung one, Obstruction as) {}

    private final Core core;
    private final List<Seen> all;
    private OptionalDouble widest = OptionalDouble.empty();

    /**
     * What any holder on the row needs.
     *
     * @param low every holder reaches from here or lower, above the floor, mm
     * @param high to here or higher, mm; not above {@code low} where holders have no height in common
     * @param depth how far out from the wall each reaches at least, mm
     * @param open where nothing fixed is in the way of all
     */
    record Core(double low, double high, double depth, List<Interval> open) {}

    Neighbours(Core core, List<Seen> all) {
        this.core = core;
        this.all = new ArrayList<>(all);
    }

    Neighbours copy() {
        return new Neighbours(core, all);
    }

    List<Seen> all() {
        return all;
    }

    void add(Seen seen) {
        all.add(seen);
        widest = OptionalDouble.empty();
    }

    void remove(Hung one) {
        all.removeIf(seen -> seen.one.at() == one.at());
        widest = OptionalDouble.empty();
    }

    /** No wider holder finds room between those that hang, mm. */
    double widest() {
        if (widest.isEmpty()) {
            widest = OptionalDouble.of(core.low < core.high ? widestGap() : Double.POSITIVE_INFINITY);
        }
        return widest.getAsDouble();
    }

    private double widestGap() {
        var taken = new ArrayList<Interval>();
        for (var seen : all) {
            if (seen.as.isBetween(core.low, core.high)) {
                seen.as.taken(core.depth).ifPresent(taken::add);
            }
        }
        return Intervals.without(core.open, taken).stream()
                .mapToDouble(Interval::length)
                .max()
                .orElse(0);
    }
}
