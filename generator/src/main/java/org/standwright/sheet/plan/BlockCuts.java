package org.standwright.sheet.plan;

import java.util.List;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;

/**
 * The cuts that part a block on the sheet. What is too long for the saw takes a break-down cut and its room, as on the
 * rest of the board; a block that may lie either way has the room for both.
 *
 * @param mayTurn whether its length may lie across the sheet's
 */
record BlockCuts(CutRules rules, boolean mayTurn) {
    private static final List<Boolean> WAYS = List.of(false, true);

    /** What a cut takes beyond the kerf in the block's own frame, at most. */
    int extra(Direction direction, int along) {
        return WAYS.stream()
                .filter(turned -> mayTurn || !turned)
                .mapToInt(turned -> rules.extra(turned ? across(direction) : direction, along))
                .reduce(0, Math::max);
    }

    /** What a cut leaves of so much room: 0 where there is none and no cut, -1 where the cut can't be made. */
    int left(Direction direction, int along, int room) {
        int extra = room == 0 ? 0 : extra(direction, along);
        return room > 0 && extra >= room ? -1 : room - extra;
    }

    /** Room beside which any cut can be made. */
    int ample() {
        return Math.max(0, rules.breakDown()) + 1;
    }

    boolean canPart(CutNode block) {
        return canPart(block, false) || mayTurn && canPart(block, true);
    }

    /** Whether a saw makes all of its cuts when it lies like this. */
    boolean canPart(CutNode block, boolean turned) {
        if (!(block instanceof CutNode.Split split)) {
            return true;
        }
        int along = split.direction() == Direction.RIP ? split.length() : split.width();
        return rules.extra(turned ? across(split.direction()) : split.direction(), along) != CutRules.NONE
                && split.nodes().stream().allMatch(node -> canPart(node, turned));
    }

    private static Direction across(Direction direction) {
        return direction == Direction.RIP ? Direction.CROSSCUT : Direction.RIP;
    }
}
