package org.standwright.design.support;

import java.util.List;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/**
 * Where a bolt or a nut goes through both layers of a bed, with the recess in the top of the upper one that takes its
 * head or flange; all mm, in the assembly's x and y or in a part's.
 *
 * @param bore through both layers
 * @param recess diameter of the recess
 * @param use what the bore is for, for the machining notes
 * @param recessUse what the recess is for
 */
record Fixing(double x, double y, double bore, double recess, double recessDepth, String use, String recessUse) {
    /** The same at a place of a part. */
    Fixing at(double partX, double partY) {
        return new Fixing(partX, partY, bore, recess, recessDepth, use, recessUse);
    }

    /** How far from its centre wood is missing, mm. */
    double reach() {
        return Math.max(bore, recess) / 2;
    }

    Hole throughLayer() {
        return Hole.through(x, y, bore, use);
    }

    /** What is bored into the upper layer. */
    List<Hole> intoUpper() {
        return List.of(throughLayer(), Hole.blind(Face.SHOW, x, y, recess, recessDepth, recessUse));
    }
}
