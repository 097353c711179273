package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.ShelfFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Side;

/**
 * Rows of holes for the pins of adjustable shelves: one row near the front and one near the back on either wall of the
 * opening (references 7.2, guides to the 32 mm system: holes 5 mm, 32 mm apart, the first row 37 mm from the front edge
 * and as much farther back as an inset front is thick).
 */
public final class ShelfPins {
    /** From the front edge, or the back, to a row, mm (references 7.2). */
    private static final double ROW = 37;
    /** Depth of a hole in a side, mm; common practice, no source. */
    private static final double DEEP = 10;
    /** Wood left between a hole's end and the middle of a partition, or a side's outer face, mm. */
    private static final double SHORT_OF_MIDDLE = 0.5;

    private static final double SHORT_OF_FACE = 2;

    private final Frame frame;
    private final List<BayLayout> bays;

    public ShelfPins(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.bays = bays;
    }

    public List<SideBore> bores() {
        var bores = new ArrayList<SideBore>();
        bays.stream()
                .flatMap(bay -> bay.leaves().stream())
                .filter(section -> ShelfBoards.kind(section).equals(Optional.of(Shelves.Kind.ADJUSTABLE)))
                .forEach(section -> rows(section, bores));
        return bores;
    }

    private void rows(SectionLayout section, List<SideBore> bores) {
        var opening = section.opening();
        boolean closed = section instanceof SectionLayout.Closed;
        var doors = closed ? ((SectionLayout.Closed) section).doors() : List.<DoorLayout>of();
        double front = ROW
                + (closed && frame.isInset()
                        ? frame.design().drawers().front().material().thickness()
                        : 0);
        for (double z : ShelfFit.holes(opening, doors)) {
            for (double y : List.of(front, frame.insideDepth() - ROW)) {
                bores.add(bore(Side.LEFT, opening.x0(), y, z));
                bores.add(bore(Side.RIGHT, opening.x1(), y, z));
            }
        }
    }

    private SideBore bore(Side wall, double x, double y, double z) {
        double deepest = frame.isSide(x) ? frame.panel() - SHORT_OF_FACE : frame.panel() / 2 - SHORT_OF_MIDDLE;
        return new SideBore(wall, x, y, z, ShelfFit.PIN, Math.min(DEEP, deepest), "shelf pin");
    }
}
