package org.standwright.design.wall.place;

import java.util.stream.DoubleStream;
import org.standwright.geom.Interval;
import org.standwright.unit.Units;

/**
 * Marks that are easy to find on a tape: whole millimetres, or eighths of an inch.
 *
 * @param step from mark to mark, mm
 */
record Tape(double step) {
    static Tape of(Units unit) {
        return new Tape(unit == Units.MM ? 1 : 25.4 / 8);
    }

    /** The marks next to a place on either side, the nearer first, of those that are free. */
    DoubleStream near(double place, Interval free) {
        double below = Math.floor(place / step);
        boolean isNearer = place / step - below <= 0.5;
        return DoubleStream.of(isNearer ? below : below + 1, isNearer ? below + 1 : below)
                .map(mark -> mark * step)
                .filter(free::holds);
    }
}
