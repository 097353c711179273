package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.solid.Prism.Corner;
import org.standwright.solid.Prism.Extent;

/**
 * A pocket seen from above, on the grid: its sides run on where they reach an edge of the blank, and its rounded
 * corners are followed by chords whose ends lie on the arc.
 */
final class PocketOutline {
    private final Pocket pocket;
    private final Part part;
    private final Fineness fineness;
    private final int x0;
    private final int y0;
    private final int x1;
    private final int y1;
    private final Extent blank;

    PocketOutline(Pocket pocket, Part part, Extent blank, Fineness fineness) {
        this.pocket = pocket;
        this.part = part;
        this.fineness = fineness;
        this.blank = blank;
        x0 = Tools.beyondLow(snap(pocket.area().x0()));
        y0 = Tools.beyondLow(snap(pocket.area().y0()));
        x1 = Tools.beyondHigh(snap(pocket.area().x1()), blank.x1());
        y1 = Tools.beyondHigh(snap(pocket.area().y1()), blank.y1());
    }

    /** Counter-clockwise and strictly convex; fewer than 3 corners if it vanishes on the grid. */
    List<Corner> corners() {
        var ring = new ArrayList<Corner>();
        ring.addAll(quarter(0, 1, 1));
        ring.addAll(quarter(1, -1, 1));
        ring.addAll(quarter(2, -1, -1));
        ring.addAll(quarter(3, 1, -1));
        return Prism.strictlyConvex(ring);
    }

    /** The corner that lies from the pocket's middle towards ({@code right}, {@code back}), each 1 or -1. */
    private List<Corner> quarter(int turns, int right, int back) {
        int x = right > 0 ? x1 : x0;
        int y = back > 0 ? y1 : y0;
        if (pocket.radius() == 0 || x < 0 || x > blank.x1() || y < 0 || y > blank.y1()) {
            return List.of(new Corner(x, y));
        }
        var area = pocket.area();
        double cornerX = right > 0 ? area.x1() : area.x0();
        double cornerY = back > 0 ? area.y1() : area.y0();
        double r = pocket.radius();
        int chords = fineness.sides(r) / 4;
        return IntStream.rangeClosed(0, chords)
                .mapToDouble(chord -> Math.PI / 2 * (turns + (double) chord / chords))
                .mapToObj(angle -> new Corner(
                        snap(cornerX - right * r * (1 - right * StrictMath.cos(angle))),
                        snap(cornerY - back * r * (1 - back * StrictMath.sin(angle)))))
                .toList();
    }

    private int snap(double mm) {
        return Solid.units("coordinate", mm, part.name());
    }
}
