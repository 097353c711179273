package org.standwright.design.stand;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.StandDesign;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/**
 * The numbers that all parts of a carcass share, mm.
 *
 * @param floorToCarcass height of the carcass's underside
 * @param height of the carcass, undersides to top of the sub-top
 * @param openings width of each bay's opening, left to right
 */
record Frame(StandDesign design, double floorToCarcass, double height, List<Double> openings) {
    Frame {
        openings = List.copyOf(openings);
    }

    double width() {
        return design.plan().width();
    }

    double depth() {
        return design.plan().depth();
    }

    /** Thickness of the carcass's sheet. */
    double panel() {
        return design.carcass().sheet().material().thickness();
    }

    double back() {
        return design.carcass().back().material().thickness();
    }

    /** Front edge to the inside of the back. */
    double insideDepth() {
        return depth() - back();
    }

    double housing() {
        return design.carcass().housing();
    }

    double top() {
        return floorToCarcass + height;
    }

    double openingBottom() {
        return floorToCarcass + panel();
    }

    double openingTop() {
        return top() - panel();
    }

    double openingLeft(int bay) {
        double left = panel();
        for (int i = 0; i < bay; i++) {
            left += openings.get(i) + panel();
        }
        return left;
    }

    /** A bay's opening seen from the front: x to the right, y is the height. */
    Rect opening(int bay) {
        double left = openingLeft(bay);
        return new Rect(left, openingBottom(), left + openings.get(bay), openingTop());
    }

    /** Left faces of the partitions. */
    List<Double> partitions() {
        return IntStream.range(1, openings.size())
                .mapToObj(bay -> openingLeft(bay) - panel())
                .toList();
    }

    Box3 box() {
        return new Box3(new Vec3(0, 0, floorToCarcass), new Vec3(width(), depth(), top()));
    }

    boolean isInset() {
        return design.drawers().mount() == StandDesign.Mount.INSET;
    }
}
