package org.standwright.design.carcass;

import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.geom.Grid;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/**
 * A screw of the panel family through one panel's face into another's end, as long as three panels at most.
 *
 * @param length overall, mm
 */
record JointScrew(StandDesign design, double length) implements Fastening {
    /** The least that it holds in the end, mm; common practice, no source. */
    private static final double LEAST_INTO = 20;
    /** Panels that it is as long as, at most. */
    private static final double PANELS = 3;

    static JointScrew of(StandDesign design) {
        var family = design.screws().panel();
        var units = design.unit();
        double panel = Fastening.panel(design);
        if (Grid.less(panel - 2 * BESIDE, family.clearance())) {
            throw Fastening.refusal(
                    design,
                    "A clearance bore of " + units.length(family.clearance()) + " for " + family.name()
                            + " leaves less than " + units.length(BESIDE) + " on either side of it in panels of "
                            + units.length(panel) + ".",
                    List.of(nearest(design)));
        }
        double most = PANELS * panel;
        if (family.lengths().stream().noneMatch(length -> suits(length, panel))) {
            throw Fastening.refusal(
                    design,
                    "No screw of " + family.name() + " reaches " + units.length(LEAST_INTO) + " beyond a panel of "
                            + units.length(panel) + " and is " + units.length(most) + " long at most.",
                    List.of(nearest(design)));
        }
        return new JointScrew(
                design, new ScrewChoice(design).panel(most, "a joint of panels of " + units.length(panel)));
    }

    private static boolean suits(double length, double panel) {
        return !Grid.less(length, panel + LEAST_INTO) && !Grid.less(PANELS * panel, length);
    }

    /** Screws that suit the sheet, where any do, else the nearest sheet and screws that suit it. */
    private static String nearest(StandDesign design) {
        var units = design.unit();
        double panel = Fastening.panel(design);
        double least =
                Math.max(LEAST_INTO / (PANELS - 1), design.screws().panel().clearance() + 2 * BESIDE);
        double sheet = Math.max(panel, least);
        var screws = "panel screws " + Exact.length(units, sheet + LEAST_INTO) + " long";
        return Grid.less(panel, least)
                ? "Use a sheet " + Exact.length(units, sheet) + " thick and " + screws + "."
                : "Use " + screws + ".";
    }

    @Override
    public String name() {
        return design.screws().panel().name() + " x " + design.unit().length(length);
    }

    @Override
    public double diameter() {
        return design.screws().panel().diameter();
    }

    @Override
    public double spacing() {
        return SPACING;
    }

    @Override
    public List<Hole> inFace(Face outer, double x, double y) {
        return List.of(Hole.through(x, y, design.screws().panel().clearance(), "joint screw"));
    }

    @Override
    public EdgeHole inEnd(Edge end, double along) {
        double panel = Fastening.panel(design);
        double pilot = design.screws().panel().pilot();
        return new EdgeHole(end, along, panel / 2, pilot, length - panel, "joint screw pilot");
    }

    @Override
    public Hardware hardware(int count) {
        return new Hardware(name(), count, "joint screws of the carcass, into panel edges (not rated)");
    }

    @Override
    public String glued() {
        return "all housings, boxes and layers";
    }
}
