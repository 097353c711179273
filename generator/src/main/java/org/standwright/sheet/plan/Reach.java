package org.standwright.sheet.plan;

import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PieceType;

/**
 * Whether a saw gets a piece out of a board at all: by a rip of the whole board and a crosscut of the strip, or the other
 * way round. What a break-down cut takes beyond the kerf is room that the board must have.
 */
record Reach(CutRules rules) {

    boolean can(PieceType type, BoardKind kind) {
        return type.fits(kind, false) && can(type.along(false), type.across(false), kind)
                || type.fits(kind, true) && can(type.along(true), type.across(true), kind);
    }

    private boolean can(int along, int across, BoardKind board) {
        if (along == board.length() && across == board.width()) {
            return true;
        }
        boolean ripFirst = rules.first() != First.CROSSCUT
                && leaves(Direction.RIP, board.length(), across, board.width())
                && leavesOrIs(Direction.CROSSCUT, across, along, board.length());
        boolean crosscutFirst = rules.first() != First.RIP
                && leaves(Direction.CROSSCUT, board.width(), along, board.length())
                && leavesOrIs(Direction.RIP, along, across, board.width());
        return ripFirst || crosscutFirst;
    }

    private boolean leavesOrIs(Direction direction, int run, int wanted, int there) {
        return wanted == there || leaves(direction, run, wanted, there);
    }

    /** Whether a cut as long as {@code run} can leave a panel of the wanted size. */
    private boolean leaves(Direction direction, int run, int wanted, int there) {
        int extra = rules.extra(direction, run);
        return extra != CutRules.NONE && wanted < there && extra <= there - wanted;
    }
}
