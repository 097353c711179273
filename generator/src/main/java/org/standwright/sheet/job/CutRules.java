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

    /**
     * What a cut leaves of so much room beside a piece: 0 where there is none and no cut, -1 where the cut can't be made.
     *
     * @param along extent of the panel in the cut's own direction, enlarged
     */
    public int left(Direction direction, int along, int room) {
        if (room == 0) {
            return 0;
        }
        int extra = extra(direction, along);
        return extra == NONE || extra >= room ? -1 : room - extra;
    }

    /**
     * Whether a piece can be cut out of a panel: by a cut in this direction, then by one square to it where more than
     * the piece is left. Where the piece is as wide as the panel there is no first rip, and where it is as long no first
     * crosscut; a piece as large as the panel counts as ripped first.
     */
    public boolean frees(Direction cut, int panelLength, int panelWidth, int along, int across) {
        boolean rip = cut == Direction.RIP;
        int beside = rip ? panelWidth - across : panelLength - along;
        int end = rip ? panelLength - along : panelWidth - across;
        if (beside == 0) {
            return rip && end == 0;
        }
        return left(cut, rip ? panelLength : panelWidth, beside) > 0
                && left(rip ? Direction.CROSSCUT : Direction.RIP, rip ? across : along, end) >= 0;
    }

    /**
     * Whether a board may be divided first in this direction. Where a piece spans the board no cut of the asked direction
     * can pass it, so that one of the other frees it.
     *
     * @param spans whether that cut alone frees the piece
     */
    public boolean begins(Direction cut, boolean spans) {
        return spans || first == First.EITHER || (cut == Direction.RIP) == (first == First.RIP);
    }

    /** Whether a piece of the type can be the first that is cut from a board of the kind. */
    public boolean begins(PieceType type, BoardKind kind) {
        return begins(type, kind, false) || begins(type, kind, true);
    }

    private boolean begins(PieceType type, BoardKind kind, boolean turned) {
        int along = type.along(turned);
        int across = type.across(turned);
        return type.fits(kind, turned)
                && (begins(Direction.RIP, along == kind.length())
                                && frees(Direction.RIP, kind.length(), kind.width(), along, across)
                        || begins(Direction.CROSSCUT, across == kind.width())
                                && frees(Direction.CROSSCUT, kind.length(), kind.width(), along, across));
    }
}
