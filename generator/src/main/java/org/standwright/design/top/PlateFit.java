package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.BayLayout;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Whether a plate can be let in: wood under and around it, and room below for what hangs from it. */
final class PlateFit {
    private static final String FIELD = "/worktop/plate";
    /** Wood left under a rabbet, mm; common practice, no source. */
    private static final double UNDER = 3;

    private final Frame frame;
    private final Plate plate;
    private final Surroundings around;
    private final List<TopSection> sections;

    PlateFit(Frame frame, Plate plate, Surroundings around, List<BayLayout> bays) {
        this.frame = frame;
        this.plate = plate;
        this.around = around;
        this.sections = TopSection.of(bays);
    }

    void check() {
        thickness();
        ledge();
        corners();
        place();
        roomBelow();
    }

    private void thickness() {
        var units = frame.design().unit();
        double layer = WorktopSize.layer(frame);
        double thickness = plate.plate().thickness();
        double least = plate.plate().rabbetDepth() + UNDER;
        if (Grid.less(layer, least)) {
            throw new ImpossibleDesignException(
                    FIELD,
                    "The rabbet for a plate of " + units.length(thickness) + " leaves less than " + units.length(UNDER)
                            + " under it in a worktop layer of " + units.length(layer) + ".",
                    List.of("Use a worktop sheet of " + exact(least) + " or more, or a plate of "
                            + exact(layer - (least - thickness)) + " or less."));
        }
    }

    private void ledge() {
        var measured = plate.plate();
        double narrow = Math.min(measured.width(), measured.depth());
        if (!Grid.less(2 * measured.ledge(), narrow)) {
            throw new ImpossibleDesignException(
                    FIELD + "/ledge",
                    "A ledge of " + frame.design().unit().length(measured.ledge())
                            + " on each side leaves no opening in a plate of "
                            + frame.design().unit().length(narrow) + ".",
                    List.of("Make the ledge " + exact(narrow / 4) + " or less."));
        }
    }

    private void corners() {
        var measured = plate.plate();
        double narrow = Math.min(measured.width(), measured.depth());
        if (Grid.less(narrow, 2 * measured.radius())) {
            throw new ImpossibleDesignException(
                    FIELD + "/radius",
                    "Corners of " + frame.design().unit().length(measured.radius())
                            + " are rounder than half of a plate of "
                            + frame.design().unit().length(narrow) + ".",
                    List.of("Make the radius " + exact(narrow / 2) + " or less."));
        }
    }

    private void place() {
        if (!new FreeSpot(around.board(), around.taken()).isFree(plate.rabbet())) {
            throw new ImpossibleDesignException(
                    FIELD,
                    "The plate's rabbet " + around.trouble(plate.rabbet()) + ".",
                    ways("Make the plan larger or its bays wider."));
        }
    }

    /** A router hangs under it: drawers cannot. */
    private void roomBelow() {
        for (var section : sections) {
            if (section.holdsDrawers() && overBay(section).meets(plate.rabbet())) {
                throw new ImpossibleDesignException(
                        FIELD,
                        "Under the plate, bay " + section.bay() + " begins with drawers, where a router has to hang.",
                        ways("Begin the contents of this bay with kind \"clear\", \"open\" or \"door\", above its"
                                + " drawers."));
            }
        }
    }

    /** The nearest place over a bay that does not begin with drawers, if there is one. */
    private List<String> ways(String otherwise) {
        var taken = new ArrayList<>(around.taken());
        sections.stream().filter(TopSection::holdsDrawers).map(this::overBay).forEach(taken::add);
        var ways = new ArrayList<String>();
        new FreeSpot(around.board(), taken).shift(List.of(plate.rabbet())).ifPresent(shift -> {
            var written = new Written(frame);
            var centre = FreeSpot.shifted(plate.area(), shift);
            ways.add("Put its centre at x " + written.fromWorktopLeft((centre.x0() + centre.x1()) / 2) + ", y "
                    + written.fromWorktopFront((centre.y0() + centre.y1()) / 2) + ".");
        });
        ways.add(otherwise);
        return ways;
    }

    private Taken overBay(TopSection section) {
        var opening = section.opening();
        return new Taken("the drawers of bay " + section.bay(), new Rect(opening.x0(), 0, opening.x1(), frame.depth()));
    }

    private String exact(double mm) {
        return new Written(frame).exact(mm);
    }
}
