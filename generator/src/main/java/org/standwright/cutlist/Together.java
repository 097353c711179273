package org.standwright.cutlist;

import java.util.List;
import org.standwright.geom.Require;

/**
 * Pieces that leave the sheet as one block.
 *
 * @param labels of their cut lines, one for each piece, in the order in which the figure runs on
 * @param along in which sense they follow each other
 * @param over left on every edge of the block and cut off when they are separated, mm
 */
public record Together(Kind kind, List<String> labels, Along along, double over) {
    /** Why they stay together. */
    public enum Kind {
        /** Side by side from one strip, so that the figure runs on. */
        ONE_STRIP,
        /** Anywhere on one sheet, so that colour and figure agree. */
        ONE_SHEET,
        /** As one oversize blank that is large enough to be held, separated later. */
        ONE_BLANK
    }

    /** The pieces' own direction in which they follow each other. */
    public enum Along {
        LENGTH,
        WIDTH
    }

    public Together {
        labels = List.copyOf(labels);
        if (labels.size() < 2) {
            throw new IllegalArgumentException("pieces cut together are " + labels + ", but take two or more.");
        }
        Require.notNegative("what is left on the edges", over, labels.toString());
        if (kind != Kind.ONE_BLANK && over > 0) {
            throw new IllegalArgumentException(
                    "pieces " + labels + " are left " + over + " mm over, but only one blank is cut over.");
        }
    }
}
