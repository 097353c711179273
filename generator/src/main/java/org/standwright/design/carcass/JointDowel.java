package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Dowel;
import org.standwright.geom.Grid;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Nominal;

/**
 * A glued dowel: half of it in one panel's inner face, as far as that leaves wood behind it, the rest and 1 mm of room in
 * another's end (references 7.3, from memory, unconfirmed: 8 x 30 mm, 15 mm on each side and 1 mm of clearance).
 */
record JointDowel(Dowel dowel, StandDesign design) implements Fastening {
    /** Behind the bore in a face, mm (shop practice: web at least 6 mm). */
    private static final double BEHIND = JointFit.LEAST_WEB;
    /** Room at the dowel's end, mm (references 7.3, unconfirmed). */
    private static final double ROOM = 1;
    /** The least in a face, mm; common practice, no source. */
    private static final double LEAST_IN_FACE = 6;
    /** At most so many times as long as what is in the face; common practice, no source. */
    private static final double LONGEST = 5;
    /** Between two dowels at most, mm; common practice, no source. */
    private static final double DOWEL_SPACING = 128;

    static JointDowel of(Dowel dowel, StandDesign design) {
        double panel = Fastening.panel(design);
        var units = design.unit();
        var fits = nearest(dowel, design);
        if (Grid.less(panel - BEHIND, LEAST_IN_FACE)) {
            throw Fastening.refusal(
                    design,
                    "A bore for " + dowel.name() + " leaves " + units.length(BEHIND) + " of a panel of "
                            + units.length(panel) + " behind it and must be " + units.length(LEAST_IN_FACE)
                            + " deep or more.",
                    List.of(sheet("Use", dowel, design)));
        }
        if (!fits.equals(dowel)) {
            var ways = new ArrayList<String>();
            ways.add("Use a dowel " + Exact.length(units, fits.diameter()) + " thick and "
                    + Exact.length(units, fits.length()) + " long.");
            if (!Grid.less(dowel.length(), 2 * LEAST_IN_FACE)) {
                ways.add(sheet("Or", dowel, design));
            }
            throw Fastening.refusal(
                    design,
                    dowel.name() + " is " + units.length(dowel.diameter()) + " thick and "
                            + units.length(dowel.length()) + " long; panels of " + units.length(panel)
                            + " take dowels of half their thickness, " + units.length(2 * LEAST_IN_FACE) + " to "
                            + units.length(LONGEST * (panel - BEHIND)) + " long.",
                    ways);
        }
        return new JointDowel(dowel, design);
    }

    /** The dowel itself where it fits. A sheet sold as 3/4 in takes half of that, however thin it measures. */
    private static Dowel nearest(Dowel dowel, StandDesign design) {
        var sheet = design.carcass().sheet();
        double panel = Fastening.panel(design);
        double half = Math.max(panel, sheet.nominal().map(Nominal::thickness).orElse(panel)) / 2;
        double longest = LONGEST * (panel - BEHIND);
        var units = design.unit();
        double length = dowel.length();
        if (Grid.less(longest, length)) {
            length = Exact.onTapeDown(units, longest);
        } else if (Grid.less(length, 2 * LEAST_IN_FACE)) {
            length = Exact.onTapeUp(units, 2 * LEAST_IN_FACE);
        }
        return new Dowel(
                dowel.name(),
                Grid.less(half, dowel.diameter()) ? Exact.onTapeDown(units, half) : dowel.diameter(),
                length);
    }

    private static String sheet(String use, Dowel dowel, StandDesign design) {
        double least =
                Math.max(Math.max(BEHIND + LEAST_IN_FACE, 2 * dowel.diameter()), BEHIND + dowel.length() / LONGEST);
        return use + " a sheet of " + Exact.up(design.unit(), least) + " or more.";
    }

    private double depthInFace() {
        return Math.min(Fastening.panel(design) - BEHIND, dowel.length() / 2);
    }

    @Override
    public String name() {
        return dowel.name();
    }

    @Override
    public double diameter() {
        return dowel.diameter();
    }

    @Override
    public double spacing() {
        return DOWEL_SPACING;
    }

    @Override
    public List<Hole> inFace(Face outer, double x, double y) {
        return List.of(Hole.blind(outer.opposite(), x, y, dowel.diameter(), depthInFace(), "dowel"));
    }

    @Override
    public EdgeHole inEnd(Edge end, double along) {
        double depth = dowel.length() - depthInFace() + ROOM;
        return new EdgeHole(end, along, Fastening.panel(design) / 2, dowel.diameter(), depth, "dowel");
    }

    @Override
    public Hardware hardware(int count) {
        return new Hardware(name(), count, "joints of the carcass, glued");
    }

    @Override
    public String glued() {
        return "all dowels, housings, boxes and layers";
    }
}
