package org.standwright.check;

import java.util.Optional;
import java.util.function.Function;
import org.standwright.design.Design;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;

/**
 * A change that may answer a finding, not tried yet.
 *
 * @param words what would be different: 'a second worktop layer'
 * @param change the design with this change, or nothing where it does not apply
 */
public record Remedy(String words, Function<Design, Optional<Design>> change) {
    /** A change of a stand; it applies to nothing else. */
    public static Remedy ofStand(String words, Function<StandDesign, Optional<StandDesign>> change) {
        return new Remedy(
                words,
                design -> design instanceof StandDesign stand
                        ? change.apply(stand).map(changed -> changed)
                        : Optional.empty());
    }

    /** A change of walls of cleats; it applies to nothing else. */
    public static Remedy ofWall(String words, Function<WallDesign, Optional<WallDesign>> change) {
        return new Remedy(
                words,
                design -> design instanceof WallDesign wall
                        ? change.apply(wall).map(changed -> changed)
                        : Optional.empty());
    }

    /** Both, one after the other. */
    public Remedy and(Remedy other) {
        return new Remedy(
                words + ", and " + other.words, design -> change.apply(design).flatMap(other.change));
    }
}
