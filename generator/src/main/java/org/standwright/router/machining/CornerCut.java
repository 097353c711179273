package org.standwright.router.machining;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Loop;

/**
 * What becomes of a corner.
 *
 * @param line that takes its place
 * @param before how much of the side that ends there it takes, mm
 * @param after how much of the side that begins there it takes, mm
 * @param relief what the bit clears besides, if anything
 */
record CornerCut(List<Loop.Corner> line, double before, double after, Optional<Geometry> relief) {
    CornerCut {
        line = List.copyOf(line);
    }
}
