package org.standwright.design;

import java.util.Optional;

/**
 * Where a stand stands, and the way there.
 *
 * @param slope of the floor, the steepest anywhere, degrees
 * @param threshold the highest that the stand is rolled over, mm; 0 for none
 * @param fall of the floor over the stand's plan, measured, mm; 0 where nobody measured
 * @param doorway that it has to go through
 * @param stairs that it has to go up or down
 */
public record Site(double slope, double threshold, double fall, Optional<Passage> doorway, Optional<Passage> stairs) {
    /** A floor of which nothing is known: 2 degrees, and a threshold of 10 mm; common practice, no source. */
    public static final Site USUAL = new Site(2, 10, 0, Optional.empty(), Optional.empty());

    /** The clear size of a way through, mm: a doorway, or stairs with the room above their steps. */
    public record Passage(double width, double height) {}
}
