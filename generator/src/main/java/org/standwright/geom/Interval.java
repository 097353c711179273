package org.standwright.geom;

/** Part of a line, from one place to another that is not before it, mm. */
public record Interval(double from, double to) {
    public Interval {
        if (!(to >= from)) {
            throw new IllegalArgumentException(
                    "interval from " + from + " to " + to + " runs backwards; change its ends over.");
        }
    }

    public double length() {
        return to - from;
    }

    public double middle() {
        return (from + to) / 2;
    }

    /** Whether a place lies in it, its ends included. */
    public boolean holds(double place) {
        return !Grid.less(place, from) && !Grid.less(to, place);
    }

    /** Whether all of another lies in it. */
    public boolean holds(Interval other) {
        return holds(other.from) && holds(other.to);
    }

    /** How much of another it shares, mm; 0 where they only touch. */
    public double overlap(Interval other) {
        return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
    }
}
