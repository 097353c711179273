package org.standwright.check.making;

import java.util.Optional;
import org.standwright.check.Limit;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;

/**
 * How long a screw may be by what it is for: what it goes through less what it has to leave, mm. Common practice, no
 * source.
 */
final class ScrewRoom {
    private static final double BEHIND = 2;
    private static final double BELOW_TOP = 5;
    private static final double WASHER = 1.5;
    /** Between the tips of two screws in a partition. */
    private static final double BETWEEN_TIPS = 0.5;

    private final StandDesign design;

    ScrewRoom(StandDesign design) {
        this.design = design;
    }

    /** Of a use as the list of hardware says it; empty for screws into edges and the like. */
    Optional<Limit> limit(String use) {
        double panel = design.carcass().sheet().material().thickness();
        double box = design.drawers().box().material().thickness();
        double front = design.drawers().front().material().thickness();
        if (use.startsWith("worktop")) {
            double top = design.worktop().sheet().material().thickness();
            return leaving(BELOW_TOP, panel + design.worktop().layers() * top);
        }
        if (use.equals("slides on partitions")) {
            return leaving((panel + BETWEEN_TIPS) / 2, plate() + panel);
        }
        return switch (use) {
            case "slides on drawer boxes" -> leaving(BEHIND, plate() + box);
            case "slides on sides" -> leaving(BEHIND, plate() + panel);
            case "hinge plates on uprights" -> leaving(BEHIND, panel);
            case "hinge cups on doors" -> leaving(BEHIND, front);
            case "drawer fronts, from inside the box" -> leaving(BEHIND, WASHER + box + front);
            case "runners and kickers, through their width into the uprights" -> leaving(BEHIND, bar() + panel);
            default -> use.endsWith("down through the bottom") ? leaving(BEHIND, 3 * panel) : Optional.empty();
        };
    }

    private static Optional<Limit> leaving(double left, double through) {
        return Optional.of(Limit.atMost(through - left, through));
    }

    /** Metal of the slide under the head. */
    private double plate() {
        return design.drawers().hang() instanceof Hang.Slides slides
                ? slides.slide().plate()
                : 0;
    }

    private double bar() {
        return design.drawers().hang() instanceof Hang.Runners runners
                ? runners.bar().width()
                : 0;
    }
}
