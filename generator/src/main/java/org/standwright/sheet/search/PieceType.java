package org.standwright.sheet.search;

import org.standwright.cutlist.CutLine;

/**
 * Equal pieces to cut, from one cut line.
 *
 * @param length enlarged by the kerf
 * @param width enlarged by the kerf
 * @param turnable whether its length may lie across the sheet
 */
record PieceType(CutLine line, int length, int width, boolean turnable) {
    int count() {
        return line.count();
    }

    long area() {
        return (long) length * width;
    }

    /** Its extent along the sheet's length. */
    int along(boolean turned) {
        return turned ? width : length;
    }

    /** Its extent across the sheet. */
    int across(boolean turned) {
        return turned ? length : width;
    }
}
