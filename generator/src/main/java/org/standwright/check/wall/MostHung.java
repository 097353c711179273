package org.standwright.check.wall;

/**
 * The most that may hang somewhere.
 *
 * @param mass kg
 * @param weakest what gives beyond it: 'the screw is drawn out'
 */
public record MostHung(double mass, String weakest) {
    /** The lesser of both; of equals this. */
    MostHung or(MostHung other) {
        return other.mass < mass ? other : this;
    }
}
