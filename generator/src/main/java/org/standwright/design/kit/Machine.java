package org.standwright.design.kit;

import java.util.List;
import java.util.Optional;

/**
 * A machine as its owner measured it, standing on its own feet.
 *
 * @param base outline of what stands on the worktop
 * @param envelope the whole machine, with tables and handles
 * @param mass kg
 * @param reference the surface that has to come to the working height
 * @param feet height of feet or pads that stay on under the base, mm; 0 when they are taken off
 * @param reachable sides that have to stay in reach: a crank, a belt cover, a switch
 * @param operator the side at which the person works
 * @param feed which way boards pass through
 */
public record Machine(
        String name,
        Size2 base,
        Envelope envelope,
        double mass,
        Reference reference,
        double feet,
        Optional<CentreOfMass> centreOfMass,
        Optional<Mounting> mounting,
        Optional<WorkingForce> workingForce,
        Optional<DustPort> dustPort,
        Optional<Cord> cord,
        List<Side> reachable,
        Side operator,
        Feed feed) {
    public Machine {
        reachable = List.copyOf(reachable);
    }
}
