package org.standwright.design.frame;

import java.util.Comparator;
import java.util.List;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Screw;
import org.standwright.geom.Grid;

/** The longest screw of a family that does not come through. */
public final class ScrewChoice {
    /** A screw ends at least this far before the far face, mm (shop practice, common practice, no source). */
    public static final double SHORT_OF_FACE = 2;
    /** Wood left between the tips of two screws that meet in a partition from both sides, mm. */
    private static final double BETWEEN_TIPS = 0.5;
    /** The least that a runner's screw holds in, mm; common practice, no source. */
    private static final double LEAST_BITE = 8;

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

    /** The thinnest panel that takes a screw of a slide, mm. */
    public double thinnestForSlides() {
        return design.screws().slide().lengths().get(0) - plate() + SHORT_OF_FACE;
    }

    /** How deep a slide screw of this length goes into the wood, mm. */
    public double slideDepth(double screw) {
        return screw - plate();
    }

    /** For a hinge on one panel, which has no metal to speak of under the head. */
    public double hingeInto(double panel) {
        return hinge(panel - SHORT_OF_FACE, panel);
    }

    /** For hinges on a partition: the screw stays within its half, whatever comes from the other face. */
    public double hingeIntoShared(double panel) {
        return hinge((panel - BETWEEN_TIPS) / 2, panel);
    }

    /** Countersunk through a leaf of this thickness into one panel; where another comes from the far face, into its half. */
    public double butt(double leaf, double panel, boolean shared) {
        double deepest = shared ? (panel - BETWEEN_TIPS) / 2 : panel - SHORT_OF_FACE;
        return panel(
                leaf + deepest, "butt hinges on a panel of " + design.unit().length(panel));
    }

    /** Through the width of a runner into an upright, short of its far face, but deep enough to hold. */
    public double runner(Bar bar) {
        var units = design.unit();
        var family = design.screws().panel();
        double panel = design.carcass().sheet().material().thickness();
        double most = bar.width() + panel - SHORT_OF_FACE;
        double length = longest(family, most, "/screws/panel", "runners on a panel of " + units.length(panel));
        if (Grid.less(length, bar.width() + LEAST_BITE)) {
            throw new ImpossibleDesignException(
                    "/drawers/hang/bar",
                    "Of " + family.name() + " " + units.length(length) + " is the longest that stays within a runner "
                            + units.length(bar.width()) + " wide and the panel behind it; it must reach "
                            + units.length(LEAST_BITE) + " into the panel.",
                    List.of("Use a bar " + units.length(Exact.onTapeDown(units, length - LEAST_BITE))
                            + " wide or less, or longer screws."));
        }
        return length;
    }

    /** A panel screw at most this long overall. */
    public double panel(double most, String where) {
        return longest(design.screws().panel(), most, "/screws/panel", where);
    }

    private double slide(double deepest, double panel) {
        return longest(
                design.screws().slide(),
                deepest + plate(),
                "/screws/slide",
                "slides on a panel of " + design.unit().length(panel));
    }

    /** Metal of the slide under a screw's head, mm. */
    private double plate() {
        return design.drawers().hang() instanceof Hang.Slides slides
                ? slides.slide().plate()
                : 0;
    }

    private double hinge(double deepest, double panel) {
        return longest(
                design.screws().slide(),
                deepest,
                "/screws/slide",
                "hinges on a panel of " + design.unit().length(panel));
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
                        List.of("Use a family with a screw of "
                                + design.unit().length(Exact.onTapeDown(design.unit(), most))
                                + " or shorter, or a thicker panel.")));
    }
}
