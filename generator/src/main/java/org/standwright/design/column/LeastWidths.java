package org.standwright.design.column;

import java.util.List;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Hinge;

/** How narrow the opening of a bay may be so that what belongs there still fits, mm. */
final class LeastWidths {
    /** Narrowest inside of a drawer box that still takes a hand, mm; common practice, no source. */
    private static final double INSIDE = 60;
    /** Narrowest opening behind one door, mm; common practice, no source. */
    private static final double DOOR = 120;
    /** The narrowest width of a bay that a design file takes, mm. */
    private static final double WRITTEN = 100;

    private final StandDesign design;

    LeastWidths(StandDesign design) {
        this.design = design;
    }

    double of(Bay bay) {
        return bay.contents().stream().mapToDouble(this::of).max().orElse(0);
    }

    /** What bays side by side take with the partitions between them; those without a width are all as wide. */
    double sideBySide(List<Bay> bays) {
        double openings = bays.stream()
                .mapToDouble(bay -> Math.max(of(bay), bay.width().orElse(share(bays))))
                .sum();
        return openings + partitions(bays);
    }

    /** The narrowest that may be written for a bay. */
    double written(Bay bay) {
        return Math.max(WRITTEN, of(bay));
    }

    /** The width that the bays without one take each. */
    double share(List<Bay> bays) {
        return bays.stream()
                .filter(bay -> bay.width().isEmpty())
                .mapToDouble(this::of)
                .max()
                .orElse(0);
    }

    /** What bays within a part take, whatever widths they were given: those must be changed first. */
    private double within(List<Bay> bays) {
        return bays.stream()
                        .mapToDouble(bay -> bay.width().isPresent() ? of(bay) : share(bays))
                        .sum()
                + partitions(bays);
    }

    private double partitions(List<Bay> bays) {
        return (bays.size() - 1) * design.carcass().sheet().material().thickness();
    }

    /** Doors on butt hinges also swing out of their gaps. */
    private double of(Content.Door door) {
        int doors = Column.doors(door);
        double swinging = door.hinge() instanceof Hinge.Butt
                ? doors * DoorWidth.leastToSwing(design)
                        + (doors + 1) * design.drawers().gap()
                : 0;
        return Math.max(doors * DOOR, swinging);
    }

    private double of(Content content) {
        if (content instanceof Content.Open || content instanceof Content.Clear) {
            return LeastHeights.CLEAR;
        } else if (content instanceof Content.Door door) {
            return of(door);
        } else if (content instanceof Content.Divided divided) {
            return within(divided.bays());
        }
        var drawers = design.drawers();
        return INSIDE
                + 2 * drawers.box().material().thickness()
                + 2 * Running.of(design).sideSpace();
    }
}
