package org.standwright.design.built;

import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * A machine where it stands, in the assembly frame.
 *
 * @param base from the worktop, or the shims on it, to the reference surface
 * @param whole with tables and handles
 * @param operator the stand's side at which the person works
 * @param infeed the stand's side at which boards go in
 * @param bolts centres of its bolts
 * @param centreOfMass where it is highest; where the machine's is not known, over the middle of its base in two thirds
 *     of its height (common practice, no source)
 */
public record MachineLayout(
        Box3 base, Box3 whole, Side operator, Optional<Side> infeed, List<Point2> bolts, Vec3 centreOfMass) {
    public MachineLayout {
        bolts = List.copyOf(bolts);
    }
}
