package org.standwright.design.kit;

import java.util.List;

/**
 * One family of screws.
 *
 * @param diameter of the thread, mm
 * @param pilot bore for the thread, mm
 * @param clearance bore that lets the shank through, mm
 * @param lengths in which it is sold, mm, rising
 */
public record Screw(String name, double diameter, double pilot, double clearance, List<Double> lengths) {
    public Screw {
        lengths = lengths.stream().sorted().toList();
    }
}
