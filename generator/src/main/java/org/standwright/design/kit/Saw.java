package org.standwright.design.kit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.standwright.geom.Require;

/**
 * The saw that cuts the sheets, and what it can do.
 *
 * @param kerf width of its cut, mm
 * @param trim cut off the edges of a new sheet first
 * @param stages most turns of the cutting direction, 2 or 3; empty for as many as it takes
 * @param first direction in which a sheet is divided first
 * @param longestRip longest cut along the sheet's length that it can make, mm; empty for any
 * @param longestCrosscut longest cut across the sheet that it can make, mm; empty for any
 * @param smallestPiece what is pushed through it is at least so long along the fence, mm; 0 for no limit
 * @param breakDown the hand-held saw that makes cuts too long for it
 */
public record Saw(
        double kerf,
        Trim trim,
        OptionalInt stages,
        First first,
        OptionalDouble longestRip,
        OptionalDouble longestCrosscut,
        double smallestPiece,
        Optional<BreakDown> breakDown) {
    /** Direction of a sheet's first cuts. */
    public enum First {
        RIP,
        CROSSCUT,
        /** Whichever saves more. */
        EITHER
    }

    public Saw {
        Require.notNegative("kerf", kerf, "saw");
        Require.notNegative("smallest piece", smallestPiece, "saw");
        stages.ifPresent(most -> {
            if (most != 2 && most != 3) {
                throw new IllegalArgumentException(
                        "stages of the saw are " + most + ", but must be 2 or 3; leave them out for any number.");
            }
        });
        longestRip.ifPresent(longest -> Require.positive("longest rip", longest, "saw"));
        longestCrosscut.ifPresent(longest -> Require.positive("longest crosscut", longest, "saw"));
    }

    /** A saw without limits that trims every edge alike. */
    public Saw(double kerf, double trim) {
        this(
                kerf,
                Trim.all(trim),
                OptionalInt.empty(),
                First.EITHER,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                Optional.empty());
    }
}
