package org.standwright.design.wall.row;

import java.util.List;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.built.Screwing;
import org.standwright.part.Recess;
import org.standwright.unit.Units;

/** Chooses the screws that hold strips to walls. */
public final class StripScrews {
    /** How deep a washer head is sunk, mm (common practice, no source). */
    static final double SUNK = 5;

    private StripScrews() {}

    /** Refuses screws of which none is long enough, and heads that find no room on the strip. */
    public static Screwing of(WallDesign design) {
        double thickness = design.cleat().thickness();
        double under = design.fixing().washer().isPresent() ? thickness - SUNK : thickness;
        var heights = heights(design);
        var recess = recess(design);
        new HeadFit(design, recess, heights).check();
        return new Screwing(
                new ScrewLength(design, under).length(),
                heights,
                design.fixing().screw().clearance(),
                recess,
                under);
    }

    /**
     * Heights above the strip's lower edge, mm. One in the middle of the short face, which is what lies on the wall; two at a quarter and three quarters of it, the
     * lower one 4 diameters from the edge if the middle is farther (common practice, no source).
     */
    public static List<Double> heights(WallDesign design) {
        double face = design.cleat().shortFace();
        if (design.fixing().perStud() == 1) {
            return List.of(face / 2);
        }
        double wanted = 4 * design.fixing().screw().diameter();
        double lower = Math.max(face / 4, wanted <= face / 2 ? wanted : 0);
        return List.of(lower, face * 3 / 4);
    }

    /** What their heads sink into. A head is as wide as two diameters (common practice, no source). */
    public static Recess recess(WallDesign design) {
        var washer = design.fixing().washer();
        return washer.isPresent()
                ? new Recess.Counterbore(washer.getAsDouble(), SUNK)
                : new Recess.Countersink(2 * design.fixing().screw().diameter(), design.unit() == Units.MM ? 90 : 82);
    }
}
