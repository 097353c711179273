package org.standwright.cutlist;

import java.util.List;
import java.util.Set;

/**
 * What is asked of the cutting beyond sizes and grain.
 *
 * @param later labels of the lines that wait until what they go into was measured
 * @param free labels of the lines whose grain may run either way
 * @param mating labels of the lines that sit in dados, whose width their board's thickness decides
 */
public record Cutting(Set<String> later, Set<String> free, Set<String> mating, List<Together> together) {
    /** Nothing beyond sizes and grain. */
    public static final Cutting PLAIN = new Cutting(Set.of(), Set.of(), Set.of(), List.of());

    public Cutting {
        later = Set.copyOf(later);
        free = Set.copyOf(free);
        mating = Set.copyOf(mating);
        together = List.copyOf(together);
    }
}
