package org.standwright.sheet.sawing;

import java.util.OptionalDouble;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.SheetUnit;

/**
 * What the saws take and how far they reach, units.
 *
 * @param longestRip longest rip of the saw itself; the hand-held one has no limit
 * @param smallest what is pushed through the saw is at least so long along the fence
 * @param handKerf of the hand-held saw; the saw's own without one
 * @param allowance that a hand-held saw leaves on either side
 */
record Blades(int kerf, int longestRip, int longestCrosscut, int smallest, boolean hand, int handKerf, int allowance) {
    static Blades of(Saw saw) {
        var hand = saw.breakDown();
        return new Blades(
                SheetUnit.up(saw.kerf()),
                units(saw.longestRip()),
                units(saw.longestCrosscut()),
                SheetUnit.up(saw.smallestPiece()),
                hand.isPresent(),
                SheetUnit.up(hand.map(other -> other.kerf()).orElse(saw.kerf())),
                SheetUnit.up(hand.map(other -> other.allowance()).orElse(0.0)));
    }

    private static int units(OptionalDouble longest) {
        return longest.isPresent() ? SheetUnit.down(longest.getAsDouble()) : Integer.MAX_VALUE;
    }

    /** Whether the saw itself makes a cut of this length. */
    boolean reach(Direction direction, int along) {
        return along <= (direction == Direction.RIP ? longestRip : longestCrosscut);
    }
}
