package org.standwright.sheet.job;

import org.standwright.geom.Require;

/**
 * Equal pieces to cut.
 *
 * @param length along the sheet's length when it lies straight; enlarged by the kerf
 * @param width enlarged by the kerf
 * @param mating whether its board has to be as thick as the design counts on, within a dado's play
 */
public record PieceType(int length, int width, int count, Ways ways, boolean mating) {
    /** How a piece may lie on the sheet. */
    public enum Ways {
        STRAIGHT,
        /** Its length across the sheet's. */
        TURNED,
        EITHER
    }

    public PieceType {
        Require.positive("length", length, "piece");
        Require.positive("width", width, "piece");
        Require.positive("count", count, "piece");
        ways = length == width ? Ways.STRAIGHT : ways;
    }

    public long area() {
        return (long) length * width;
    }

    public boolean allows(boolean turned) {
        return ways == Ways.EITHER || turned == (ways == Ways.TURNED);
    }

    /** Its extent along the sheet's length. */
    public int along(boolean turned) {
        return turned ? width : length;
    }

    /** Its extent across the sheet. */
    public int across(boolean turned) {
        return turned ? length : width;
    }

    /** Whether it can be cut from this kind of board at all. */
    public boolean fits(BoardKind kind) {
        return fits(kind, false) || fits(kind, true);
    }

    public boolean fits(BoardKind kind, boolean turned) {
        return allows(turned)
                && along(turned) <= kind.length()
                && across(turned) <= kind.width()
                && (kind.mating() || !mating);
    }
}
