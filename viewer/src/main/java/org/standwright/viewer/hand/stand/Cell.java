package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.geom.Grid;

/**
 * One thing in a bay's column that has a height of its own: a drawer's front, a door, or an opening.
 *
 * @param source content of the bay in the file that it comes from, or one that is new
 * @param height of the front, or of the opening, mm
 */
record Cell(ObjectNode source, Share share, double height) {
    /** Where its height comes from. */
    enum Share {
        /** A front among others whose heights are given. */
        GIVEN,
        EQUAL,
        GRADUATED,
        FILLED,
        /** A front of its own that takes what is left. */
        REST,
        /** No drawer; its height is given. */
        FIXED,
        /** No drawer; it takes what is left. */
        OPEN_ENDED
    }

    boolean isDrawer() {
        return share != Share.FIXED && share != Share.OPEN_ENDED;
    }

    /** Whether it takes what others leave. */
    boolean isElastic() {
        return share != Share.GIVEN && share != Share.FIXED;
    }

    /** With its height given; the same where it has that height already. */
    Cell given(double mm) {
        return !isElastic() && Grid.same(mm, height)
                ? this
                : new Cell(source, isDrawer() ? Share.GIVEN : Share.FIXED, mm);
    }

    /** As one that takes what is left, alone. */
    Cell rest() {
        return new Cell(source, isDrawer() ? Share.REST : Share.OPEN_ENDED, height);
    }
}
