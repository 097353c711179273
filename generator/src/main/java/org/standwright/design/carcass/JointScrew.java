package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.Comparator;
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
        double widest = panel - 2 * BESIDE;
        if (Grid.less(widest, family.clearance())) {
            throw Fastening.refusal(
                    design,
                    "A clearance bore of " + units.length(family.clearance()) + " for " + family.name()
                            + " leaves less than " + units.length(BESIDE) + " on either side of it in panels of "
                            + units.length(panel) + ".",
                    List.of("Use a sheet of " + Exact.up(units, leastSheet(design)) + " or more."));
        }
        double most = PANELS * panel;
        boolean none = family.lengths().stream().noneMatch(length -> suits(length, panel));
        if (none) {
            throw Fastening.refusal(
                    design,
                    "No screw of " + family.name() + " reaches " + units.length(LEAST_INTO) + " beyond a panel of "
                            + units.length(panel) + " and is " + units.length(most) + " long at most.",
                    ways(design));
        }
        return new JointScrew(
                design, new ScrewChoice(design).panel(most, "a joint of panels of " + units.length(panel)));
    }

    private static boolean suits(double length, double panel) {
        return !Grid.less(length, panel + LEAST_INTO) && !Grid.less(PANELS * panel, length);
    }

    private static List<String> ways(StandDesign design) {
        var units = design.unit();
        double panel = Fastening.panel(design);
        var ways = new ArrayList<String>();
        if (!Grid.less(PANELS * panel, panel + LEAST_INTO)) {
            ways.add("Use panel screws " + Exact.length(units, panel + LEAST_INTO) + " long.");
        }
        design.screws().panel().lengths().stream()
                .map(length -> nearestSheet(design, length))
                .filter(sheet -> design.screws().panel().lengths().stream().anyMatch(length -> suits(length, sheet)))
                .min(Comparator.comparingDouble(sheet -> Math.abs(sheet - panel)))
                .ifPresent(sheet -> ways.add(
                        (ways.isEmpty() ? "Use" : "Or") + " a sheet " + Exact.length(units, sheet) + " thick."));
        return ways;
    }

    /** Thickness that a screw of this length suits, nearest to that of the design. */
    private static double nearestSheet(StandDesign design, double length) {
        double least = Math.max(length / PANELS, design.screws().panel().clearance() + 2 * BESIDE);
        return Math.max(least, Math.min(Fastening.panel(design), length - LEAST_INTO));
    }

    /** The thinnest that has room for its bore and a screw of the family. */
    private static double leastSheet(StandDesign design) {
        double room = design.screws().panel().clearance() + 2 * BESIDE;
        return design.screws().panel().lengths().stream()
                .mapToDouble(length -> Math.max(length / PANELS, room))
                .filter(sheet -> design.screws().panel().lengths().stream().anyMatch(length -> suits(length, sheet)))
                .min()
                .orElse(room);
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
