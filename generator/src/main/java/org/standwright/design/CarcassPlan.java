package org.standwright.design;

import org.standwright.part.SheetGood;

/**
 * The box that everything hangs on.
 *
 * @param sheet of sides, bottom, sub-top, partitions, fixed shelves, blocks and plinth
 * @param housing depth of every dado and rabbet, mm
 * @param fit how much wider a dado is than the panel in it, mm
 * @param joint of sides, bottom, sub-top and partitions; what stands between them is always housed
 * @param backPieces 1 or 2; two meet on the middle of a partition between bays
 */
public record CarcassPlan(SheetGood sheet, SheetGood back, double housing, double fit, Joint joint, int backPieces) {
    /** With its back in one piece. */
    public CarcassPlan(SheetGood sheet, SheetGood back, double housing, double fit, Joint joint) {
        this(sheet, back, housing, fit, joint, 1);
    }

    /** The same box of other sheets. */
    public CarcassPlan of(SheetGood otherSheet, SheetGood otherBack) {
        return new CarcassPlan(otherSheet, otherBack, housing, fit, joint, backPieces);
    }

    /** The same with its back in so many pieces. */
    public CarcassPlan backIn(int pieces) {
        return new CarcassPlan(sheet, back, housing, fit, joint, pieces);
    }

    /** The same with its panels joined otherwise. */
    public CarcassPlan joined(Joint other) {
        return new CarcassPlan(sheet, back, housing, fit, other, backPieces);
    }
}
