package org.standwright.design.column;

import org.standwright.design.Content;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;

/** How low the openings and fronts of a bay may be so that what belongs there still fits, mm. */
final class LeastHeights {
    /** Open space that a hand still reaches into, mm; common practice, no source. */
    static final double CLEAR = 40;
    /** The lowest door, mm; common practice, no source. */
    private static final double DOOR = 150;
    /** Between the two hinges of the lowest door, mm. */
    private static final double BETWEEN_HINGES = 10;

    private final StandDesign design;
    private final FrontReach reach;
    private final BoxHeights boxes;

    LeastHeights(StandDesign design) {
        this.design = design;
        this.reach = new FrontReach(design);
        this.boxes = new BoxHeights(design);
    }

    /** The front of the drawer at a place (0 is the top) in an opening with this many. */
    double front(int place, int count, Walls walls) {
        return boxes.leastCell(place == 0)
                + (place == 0 ? reach.lost(walls.upper()) : 0)
                + (place == count - 1 ? reach.lost(walls.lower()) : 0);
    }

    double open(Content.Open open) {
        return open.shelves().map(shelves -> shelved(shelves, CLEAR, 0)).orElse(CLEAR);
    }

    /** The front of a door: its hinges, and its shelves with the hinges beside them, stand in the opening behind it. */
    double door(Content.Door door, Walls walls) {
        double half = HingeSpan.half(door.hinge());
        double clear = DoorFit.FROM_SHELF + Math.max(DoorFit.FROM_SHELF, half);
        double opening = Math.max(
                4 * half + BETWEEN_HINGES,
                door.shelves().map(shelves -> shelved(shelves, clear, half)).orElse(CLEAR));
        return Math.max(DOOR, reach.room(opening, 1, walls));
    }

    /** An opening with shelves: fixed ones with this much between them, or rows with a hole for each pin. */
    private double shelved(Shelves shelves, double clear, double halfHinge) {
        double panel = design.carcass().sheet().material().thickness();
        int count = shelves.count();
        if (shelves.kind() == Shelves.Kind.FIXED) {
            return count * panel + (count + 1) * clear;
        }
        double rows = (count - 1) * ShelfFit.apart(panel);
        double hinged = DoorFit.FROM_END + halfHinge + ShelfFit.FROM_HINGE;
        return Grid.same(halfHinge, 0)
                ? 2 * ShelfFit.FROM_LEVEL + rows
                : 2 * Math.max(ShelfFit.FROM_LEVEL, hinged) + ShelfFit.PITCH + rows;
    }
}
