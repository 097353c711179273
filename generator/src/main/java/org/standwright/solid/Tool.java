package org.standwright.solid;

import java.util.List;

/** What one tool sweeps out, on the 1/1024 mm grid. */
sealed interface Tool permits Prism, Cone {
    /** The box around it. */
    Extent extent();

    /** Its faces, to be looked at from outside. */
    List<Side> sides();

    /** What it takes from a board at most, in cubic grid units. */
    double volumeWithin(Extent board);
}
