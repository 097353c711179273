package org.standwright.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.kit.Hinge;

/**
 * What fills a part of a bay's height. A fixed panel lies between drawers and anything else. What has no height shares
 * what is left evenly, graduated drawers by their ratio.
 */
public sealed interface Content {
    /**
     * Drawers with fronts of given heights.
     *
     * @param fronts heights from top to bottom, mm
     */
    record GivenDrawers(List<Double> fronts) implements Content {
        public GivenDrawers {
            fronts = List.copyOf(fronts);
        }
    }

    /**
     * This many drawers, with equal fronts, in the height that is left.
     *
     * @param least height of each front, mm
     * @param most height of each front, mm
     */
    record EqualDrawers(int count, OptionalDouble least, OptionalDouble most) implements Content {}

    /**
     * This many drawers in the height that is left, each front higher than the one above it.
     *
     * @param ratio of a front's height to that of the one above it
     * @param least height of each front, mm
     * @param most height of each front, mm
     */
    record GraduatedDrawers(int count, double ratio, OptionalDouble least, OptionalDouble most) implements Content {}

    /**
     * As many drawers as the height left can hold, with fronts of one height; the lowest takes what remains.
     *
     * @param front height, mm
     */
    record FillDrawers(double front) implements Content {}

    /**
     * Open space.
     *
     * @param height of its opening, mm
     */
    record Open(OptionalDouble height, Optional<Shelves> shelves) implements Content {}

    /**
     * Space behind a door.
     *
     * @param height of the door, mm
     * @param hung where its hinges are
     */
    record Door(OptionalDouble height, Hinge hinge, Hung hung, Optional<Shelves> shelves) implements Content {}

    /**
     * Space kept clear for a motor, a hose or a vacuum.
     *
     * @param height of its opening, mm
     * @param use what it is kept clear for
     * @param hose outside diameter of a hose that bends in it, mm
     */
    record Clear(OptionalDouble height, String use, OptionalDouble hose) implements Content {}

    /**
     * A part of the bay that is divided again, side by side.
     *
     * @param height of its opening, mm
     * @param bays from left to right
     */
    record Divided(OptionalDouble height, List<Bay> bays) implements Content {
        public Divided {
            bays = List.copyOf(bays);
        }
    }
}
