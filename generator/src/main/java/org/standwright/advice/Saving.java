package org.standwright.advice;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.StandDesign;

/**
 * Changes that save a sheet or money together.
 *
 * @param design with the changes
 * @param after what its boards come to
 * @param also what else is different then
 */
public record Saving(List<Change> changes, StandDesign design, Cost after, List<String> also) {
    public Saving {
        changes = List.copyOf(changes);
        also = List.copyOf(also);
    }

    /** How large the changes are; see {@link Change#size}. */
    public double size() {
        return changes.stream().mapToDouble(Change::size).sum();
    }

    /** What is different, in words. */
    public String words(StandDesign before) {
        return changes.stream().map(change -> change.words(before)).collect(Collectors.joining(", and "));
    }
}
