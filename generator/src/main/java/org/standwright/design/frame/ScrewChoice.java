package org.standwright.design.frame;

import java.util.Comparator;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;

/** The longest screw of a family that does not come through. */
public final class ScrewChoice {
    /** A screw ends at least this far before the far face, mm (shop practice, common practice, no source). */
    public static final double SHORT_OF_FACE = 2;
    /** Wood left between the tips of two screws that meet in a partition from both sides, mm. */
    private static final double BETWEEN_TIPS = 0.5;

    private final StandDesign design;

    public ScrewChoice(StandDesign design) {
        this.design = design;
    }

    /** For a slide on one panel: into it by at most its thickness less 2 mm. */
    public double slideInto(double panel) {
        return slide(panel - SHORT_OF_FACE, panel);
    }

    /** For slides on both faces of a partition: each screw stays within its half. */
    public double slideIntoShared(double panel) {
        return slide((panel - BETWEEN_TIPS) / 2, panel);
    }

    /** How deep a slide screw of this length goes into the wood, mm. */
    public double slideDepth(double screw) {
        return screw - design.drawers().slide().plate();
    }

    /** A panel screw at most this long overall. */
    public double panel(double most, String where) {
        return longest(design.screws().panel(), most, "/screws/panel", where);
    }

    private double slide(double deepest, double panel) {
        return longest(
                design.screws().slide(),
                deepest + design.drawers().slide().plate(),
                "/screws/slide",
                "slides on a panel of " + design.unit().length(panel));
    }

    private double longest(Screw family, double most, String field, String where) {
        return family.lengths().stream()
                .filter(length -> !Grid.less(most, length))
                .max(Comparator.naturalOrder())
                .orElseThrow(() -> new ImpossibleDesignException(
                        field,
                        "The shortest screw of " + family.name() + " is "
                                + design.unit().length(family.lengths().get(0)) + ", but " + where
                                + " may have " + design.unit().length(most) + " at most.",
                        List.of("Use a family with a shorter screw, or a thicker panel.")));
    }
}
