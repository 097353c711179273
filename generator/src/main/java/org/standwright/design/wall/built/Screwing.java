package org.standwright.design.wall.built;

import java.util.List;
import org.standwright.design.wall.Framing;
import org.standwright.part.Recess;

/**
 * How screws hold strips to all walls of a design.
 *
 * @param length of the screws, mm
 * @param heights of those at one stud above the strip's lower edge, from the lowest, mm
 * @param bore that lets the shank through, mm
 * @param recess that their heads sink into
 * @param under how much of the strip is under a head, mm
 */
public record Screwing(double length, List<Double> heights, double bore, Recess recess, double under) {
    public Screwing {
        heights = List.copyOf(heights);
    }

    /** How far they go into a stud, behind what covers it, mm. */
    public double into(Framing framing) {
        return length - under - framing.covering();
    }
}
