package org.standwright.design.drawer;

import java.util.Comparator;
import java.util.List;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.OnRunners;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Bar;
import org.standwright.geom.Grid;

/** Whether a bar serves as runners: wide enough for the box's walls, thick enough for its screws, not meeting its mate. */
public final class RunnerFit {
    /** Wood above and below a screw through a runner, mm; common practice, no source. */
    private static final double BESIDE_SCREW = 3;

    private static final String FIELD = "/drawers/hang/bar";

    private final StandDesign design;

    public RunnerFit(StandDesign design) {
        this.design = design;
    }

    /** Refuses a bar that carries no box, or takes no screws. */
    public void check() {
        if (design.drawers().hang() instanceof Hang.Runners runners) {
            carries(runners.bar());
            takesScrews(runners.bar());
        }
    }

    /** Refuses a bar that leaves no room to another one in the narrowest opening with drawers. */
    public void check(List<BayLayout> bays) {
        if (design.drawers().hang() instanceof Hang.Runners runners) {
            bays.stream()
                    .flatMap(bay -> bay.leaves(SectionLayout.Drawers.class))
                    .map(section -> section.opening().width())
                    .min(Comparator.naturalOrder())
                    .ifPresent(narrowest -> leavesRoom(runners.bar(), narrowest));
        }
    }

    private void carries(Bar bar) {
        double wall = design.drawers().box().material().thickness();
        double least = OnRunners.SIDE_PLAY + wall;
        if (Grid.less(bar.width(), least)) {
            throw refused(
                    "A runner " + shown(bar.width()) + " wide is too narrow for box walls of " + shown(wall) + " with "
                            + shown(OnRunners.SIDE_PLAY) + " play at the side: it takes " + shown(least) + ".",
                    "Use a bar " + Exact.up(design.unit(), least) + " wide or more.");
        }
    }

    private void takesScrews(Bar bar) {
        double bore = design.screws().panel().clearance();
        double least = bore + 2 * BESIDE_SCREW;
        if (Grid.less(bar.thickness(), least)) {
            throw refused(
                    "A runner " + shown(bar.thickness()) + " thick is too thin for bores of " + shown(bore) + " with "
                            + shown(BESIDE_SCREW) + " of wood above and below: it takes " + shown(least) + ".",
                    "Use a bar " + Exact.up(design.unit(), least) + " thick or more.");
        }
    }

    private void leavesRoom(Bar bar, double opening) {
        if (Grid.less(opening, 2 * bar.width())) {
            throw refused(
                    "Two runners " + shown(bar.width()) + " wide do not fit into an opening of " + shown(opening) + ".",
                    "Use a bar " + shown(Exact.onTapeDown(design.unit(), opening / 2)) + " wide or less.");
        }
    }

    private String shown(double mm) {
        return design.unit().length(mm);
    }

    private static ImpossibleDesignException refused(String reason, String way) {
        return new ImpossibleDesignException(FIELD, reason, List.of(way));
    }
}
