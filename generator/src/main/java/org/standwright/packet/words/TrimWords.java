package org.standwright.packet.words;

import org.standwright.design.kit.Trim;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** What is cut off a new sheet's edges, in words. */
public final class TrimWords {
    private TrimWords() {}

    /** 'trim 5 mm', or edge by edge where they differ. */
    public static String of(Trim trim, Units units) {
        if (!trim.isEven()) {
            return "trim left " + units.length(trim.left()) + ", right " + units.length(trim.right()) + ", bottom "
                    + units.length(trim.bottom()) + ", top " + units.length(trim.top());
        }
        return Grid.same(trim.left(), 0) ? "edges used as bought" : "trim " + units.length(trim.left());
    }
}
