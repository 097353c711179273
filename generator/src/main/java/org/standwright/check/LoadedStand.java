package org.standwright.check;

import java.util.Arrays;
import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.solid.AssemblySolids;
import org.standwright.unit.Units;

/**
 * A stand and everything that weighs: its boards as solids, what is bolted on, its machine, its ballast, and drawers and
 * shelves full.
 */
public record LoadedStand(Stand stand, List<Weight> weights) {
    public LoadedStand {
        weights = List.copyOf(weights);
    }

    /** @param solids of this very stand */
    public static LoadedStand of(Stand stand, AssemblySolids solids) {
        return new LoadedStand(stand, new Weighing(stand).all(solids));
    }

    public StandDesign design() {
        return stand.design();
    }

    /** What its maker reads. */
    public Units units() {
        return design().unit();
    }

    /** Mass of everything that is of one of these kinds, kg. */
    public double mass(Weight.Kind... kinds) {
        var wanted = Arrays.asList(kinds);
        return weights.stream()
                .filter(weight -> wanted.contains(weight.kind()))
                .mapToDouble(Weight::mass)
                .sum();
    }

    /** Mass of everything, full, kg. */
    public double mass() {
        return mass(Weight.Kind.values());
    }
}
