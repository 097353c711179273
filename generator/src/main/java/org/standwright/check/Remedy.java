package org.standwright.check;

import java.util.Optional;
import java.util.function.Function;
import org.standwright.design.StandDesign;

/**
 * A change that may answer a finding, not tried yet.
 *
 * @param words what would be different: 'a second worktop layer'
 * @param change the design with this change, or nothing where it does not apply
 */
public record Remedy(String words, Function<StandDesign, Optional<StandDesign>> change) {
    /** Both, one after the other. */
    public Remedy and(Remedy other) {
        return new Remedy(
                words + ", and " + other.words, design -> change.apply(design).flatMap(other.change));
    }
}
