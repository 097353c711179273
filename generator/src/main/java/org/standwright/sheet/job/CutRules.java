package org.standwright.sheet.job;

import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;

/**
 * What the saw allows.
 *
 * @param kerf already in all sizes
 * @param stages most turns of the cutting direction; {@link #ANY} for no limit
 * @param longestRip longest panel that the saw rips, enlarged by the kerf; {@link #ANY} for no limit
 * @param longestCrosscut widest panel that the saw crosscuts, enlarged by the kerf
 * @param breakDown what a break-down cut takes beyond the kerf, both allowances included; {@link #NONE} without such a
 *     saw
 */
public record CutRules(int kerf, int stages, First first, int longestRip, int longestCrosscut, int breakDown) {
    public static final int ANY = Integer.MAX_VALUE;
    public static final int NONE = -1;

    /** Any cut from edge to edge. */
    public static CutRules free(int kerf) {
        return new CutRules(kerf, ANY, First.EITHER, ANY, ANY, NONE);
    }

    /**
     * What a cut takes beyond the kerf.
     *
     * @param along extent of the panel in the cut's own direction, enlarged
     * @return 0 for the saw itself, {@link #NONE} when the cut can't be made
     */
    public int extra(Direction direction, int along) {
        int longest = direction == Direction.RIP ? longestRip : longestCrosscut;
        return along <= longest ? 0 : breakDown;
    }

    /** Whether any cut from edge to edge can be made, in any order. */
    public boolean isFree() {
        return stages == ANY && first == First.EITHER && longestRip == ANY && longestCrosscut == ANY;
    }
}
