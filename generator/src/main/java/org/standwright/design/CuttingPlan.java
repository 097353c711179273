package org.standwright.design;

import java.util.List;

/**
 * What a maker asks of the cutting beyond sizes and grain.
 *
 * @param anyGrain names of parts whose grain may run either way
 */
public record CuttingPlan(List<String> anyGrain, List<KeptTogether> together) {
    /** Nothing beyond sizes and grain. */
    public static final CuttingPlan PLAIN = new CuttingPlan(List.of(), List.of());

    public CuttingPlan {
        anyGrain = List.copyOf(anyGrain);
        together = List.copyOf(together);
    }
}
