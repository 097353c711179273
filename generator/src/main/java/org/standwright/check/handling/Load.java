package org.standwright.check.handling;

import java.util.stream.DoubleStream;
import org.standwright.design.Site;
import org.standwright.geom.Vec3;

/**
 * Something that is carried through a passage.
 *
 * @param words how: 'with its machine taken off'
 * @param size of the box around it as it stands, mm
 * @param upright whether it stays upright, either side first; else it may be turned onto any side, longest way ahead
 */
record Load(String words, Vec3 size, boolean upright) {
    /** What is across the passage, mm. */
    double across() {
        return upright ? Math.min(size.x(), size.y()) : sorted()[0];
    }

    /** What is upwards in the passage, mm. */
    double upwards() {
        return upright ? size.z() : middle();
    }

    /** The second largest of its three sizes, mm. */
    double middle() {
        return sorted()[1];
    }

    /** The larger share of the passage's width and height that it takes; 1 where it just passes. */
    double share(Site.Passage passage) {
        double so = share(across(), upwards(), passage);
        return upright ? so : Math.min(so, share(upwards(), across(), passage));
    }

    /** Across its deepest corners, what a room must be high for it to be set upright again, mm. */
    double diagonal() {
        return Math.hypot(size.z(), Math.min(size.x(), size.y()));
    }

    private static double share(double across, double upwards, Site.Passage passage) {
        return Math.max(across / passage.width(), upwards / passage.height());
    }

    private double[] sorted() {
        return DoubleStream.of(size.x(), size.y(), size.z()).sorted().toArray();
    }
}
