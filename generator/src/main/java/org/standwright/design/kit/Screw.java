package org.standwright.design.kit;

import java.util.List;
import org.standwright.geom.Grid;

/**
 * One family of screws.
 *
 * @param diameter of the thread, mm
 * @param pilot bore for the thread, mm
 * @param clearance bore that lets the shank through, mm
 * @param lengths in which it is sold, mm, rising
 */
public record Screw(String name, double diameter, double pilot, double clearance, List<Double> lengths) {
    /** Diameters of numbered wood screws, #6 to #14, mm (NDS Appendix L3, as quoted). */
    private static final List<Double> NUMBERED =
            List.of(0.138 * 25.4, 0.164 * 25.4, 0.190 * 25.4, 0.216 * 25.4, 0.242 * 25.4);

    public Screw {
        lengths = lengths.stream().sorted().toList();
    }

    /** Diameter that formulas for wood screws take for it: of the largest numbered one that is not thicker, mm. */
    public double counted() {
        return NUMBERED.stream()
                .filter(size -> !Grid.less(diameter, size))
                .reduce((smaller, larger) -> larger)
                .orElse(diameter);
    }
}
