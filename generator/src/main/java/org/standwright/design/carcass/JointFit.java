package org.standwright.design.carcass;

import java.util.List;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.geom.Grid;

/** Whether housings, fasteners, grooves and screw positions leave enough wood. */
public final class JointFit {
    /** Wood that a housing leaves behind it, mm (shop practice: web at least 6 mm). */
    static final double LEAST_WEB = 6;
    /** The shallowest housing that still holds a panel, mm; common practice, no source. */
    static final double LEAST_HOUSING = 2;
    /** The thinnest box wall that still takes a groove and a screw, mm; common practice, no source. */
    private static final double LEAST_BOX_WALL = 8;

    private final StandDesign design;

    public JointFit(StandDesign design) {
        this.design = design;
    }

    public void check() {
        boolean butted = !(design.carcass().joint() instanceof Joint.Housed);
        if (!butted || design.support() instanceof Support.Plinth) {
            housing();
        }
        Fastening.of(design);
        boxWall();
        slideHoles();
    }

    /** Refuses a dado that holds nothing or leaves too little behind it. */
    void housing() {
        var units = design.unit();
        double panel = design.carcass().sheet().material().thickness();
        double housing = design.carcass().housing();
        double deepest = panel - LEAST_WEB;
        if (Grid.less(deepest, LEAST_HOUSING)) {
            throw new ImpossibleDesignException(
                    "/carcass/sheet",
                    "A carcass panel of " + units.length(panel) + " is too thin for dados and rabbets, which leave "
                            + units.length(LEAST_WEB) + " of wood behind them.",
                    List.of("Use a sheet of " + Exact.up(units, LEAST_WEB + Math.max(housing, LEAST_HOUSING))
                            + " or more."));
        }
        if (Grid.less(housing, LEAST_HOUSING) || Grid.less(deepest, housing)) {
            throw new ImpossibleDesignException(
                    "/carcass/housing",
                    "A housing " + units.length(housing) + " deep in panels of " + units.length(panel)
                            + " must be " + units.length(LEAST_HOUSING) + " to " + units.length(deepest)
                            + " deep, so that it holds and leaves " + units.length(LEAST_WEB) + " behind it.",
                    List.of(
                            "Make it "
                                    + (Grid.less(housing, LEAST_HOUSING)
                                            ? Exact.up(units, LEAST_HOUSING)
                                            : Exact.length(units, deepest))
                                    + " deep.",
                            "A third of the thickness is usual."));
        }
    }

    /** Whether the carcass's sheet and housing suit a housed carcass. */
    boolean takesDados() {
        double deepest = design.carcass().sheet().material().thickness() - LEAST_WEB;
        double housing = design.carcass().housing();
        return !Grid.less(housing, LEAST_HOUSING) && !Grid.less(deepest, housing);
    }

    private void boxWall() {
        double wall = design.drawers().box().material().thickness();
        if (Grid.less(wall, LEAST_BOX_WALL)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/drawers/box",
                    "Drawer boxes of " + units.length(wall) + " are too thin for a groove and slide screws; they take "
                            + units.length(LEAST_BOX_WALL) + " or more.",
                    List.of("Use a sheet of "
                            + Exact.up(units, Math.max(LEAST_BOX_WALL, new ScrewChoice(design).thinnestForSlides()))
                            + " or more for the boxes."));
        }
    }

    private void slideHoles() {
        if (!(design.drawers().hang() instanceof Hang.Slides slides)) {
            return;
        }
        for (var size : slides.slide().lengths()) {
            for (var holes : List.of(size.cabinetHoles(), size.boxHoles())) {
                for (double hole : holes) {
                    if (Grid.less(size.length(), hole)) {
                        var units = design.unit();
                        throw new ImpossibleDesignException(
                                "/drawers/hang/slide",
                                "A slide of " + units.length(size.length()) + " has a hole " + units.length(hole)
                                        + " from its front end, beyond its other end.",
                                List.of("Measure its holes from the front end again."));
                    }
                }
            }
        }
    }
}
