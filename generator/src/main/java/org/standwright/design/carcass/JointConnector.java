package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Connector;
import org.standwright.geom.Grid;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/**
 * A connecting screw in a stepped bore: its head fills a counterbore in one panel's outer face and ends flush with it, its
 * thread goes into another's end. No glue: it comes apart again.
 */
record JointConnector(Connector connector, StandDesign design) implements Fastening {
    /** The least of it in the end, mm; common practice, no source. */
    private static final double LEAST_INTO = 20;
    /** Room at its tip, mm; common practice, no source. */
    private static final double ROOM = 2;

    static JointConnector of(Connector connector, StandDesign design) {
        wideEnough(connector, design);
        thickEnough(connector, design);
        longEnough(connector, design);
        return new JointConnector(connector, design);
    }

    private static void wideEnough(Connector connector, StandDesign design) {
        var units = design.unit();
        double panel = Fastening.panel(design);
        double widest = panel - 2 * BESIDE;
        if (Grid.less(widest, widest(connector))) {
            throw Fastening.refusal(
                    design,
                    "A bore of " + units.length(widest(connector)) + " for " + connector.name() + " leaves less than "
                            + units.length(BESIDE) + " on either side of it in panels of " + units.length(panel) + ".",
                    ways(
                            "Use a connector with bores of " + Exact.length(units, widest) + " or less",
                            widest,
                            connector,
                            design));
        }
    }

    private static void thickEnough(Connector connector, StandDesign design) {
        var units = design.unit();
        double panel = Fastening.panel(design);
        double deepest = panel - JointFit.LEAST_WEB;
        if (Grid.less(deepest, connector.headDepth())) {
            throw Fastening.refusal(
                    design,
                    "A bore " + units.length(connector.headDepth()) + " deep for the head of " + connector.name()
                            + " leaves less than " + units.length(JointFit.LEAST_WEB) + " under it in panels of "
                            + units.length(panel) + ".",
                    ways(
                            "Use a connector whose head takes " + Exact.length(units, deepest) + " or less",
                            deepest,
                            connector,
                            design));
        }
    }

    private static void longEnough(Connector connector, StandDesign design) {
        var units = design.unit();
        double panel = Fastening.panel(design);
        double least = panel + LEAST_INTO;
        if (Grid.less(connector.length(), least)) {
            throw Fastening.refusal(
                    design,
                    connector.name() + " is " + units.length(connector.length()) + " long and reaches "
                            + units.length(Math.max(0, connector.length() - panel)) + " beyond a panel of "
                            + units.length(panel) + "; it must reach " + units.length(LEAST_INTO) + ".",
                    ways("Use a connector " + Exact.up(units, least) + " long or more", least, connector, design));
        }
    }

    private static double widest(Connector connector) {
        return Math.max(connector.head(), Math.max(connector.shank(), connector.thread()));
    }

    /** Another connector, where there is one, and a thicker sheet, where that suits this one. */
    private static List<String> ways(String other, double value, Connector connector, StandDesign design) {
        var ways = new ArrayList<String>();
        if (value > 0) {
            ways.add(other + ".");
        }
        double sheet = Math.max(widest(connector) + 2 * BESIDE, connector.headDepth() + JointFit.LEAST_WEB);
        if (Grid.less(Fastening.panel(design), sheet) && !Grid.less(connector.length(), sheet + LEAST_INTO)) {
            ways.add((ways.isEmpty() ? "Use" : "Or") + " a sheet " + Exact.length(design.unit(), sheet) + " thick.");
        }
        return ways;
    }

    @Override
    public String name() {
        return connector.name();
    }

    @Override
    public double diameter() {
        return widest(connector);
    }

    @Override
    public double spacing() {
        return SPACING;
    }

    @Override
    public List<Hole> inFace(Face outer, double x, double y) {
        return List.of(
                Hole.through(x, y, connector.shank(), "connector"),
                Hole.blind(outer, x, y, connector.head(), connector.headDepth(), "connector head"));
    }

    @Override
    public EdgeHole inEnd(Edge end, double along) {
        double panel = Fastening.panel(design);
        return new EdgeHole(end, along, panel / 2, connector.thread(), connector.length() - panel + ROOM, "connector");
    }

    @Override
    public Hardware hardware(int count) {
        return new Hardware(name(), count, "joints of the carcass, into panel edges (not rated)");
    }

    @Override
    public String glued() {
        return "all housings, boxes and layers; none between connected panels, which come apart";
    }
}
