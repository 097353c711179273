package org.standwright.drawing;

import org.standwright.unit.Units;

/** Sheets of paper, upright: ISO 216 A4 and North American Letter. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** What is in the printer where people measure like this. */
    public static Paper of(Units units) {
        return units == Units.MM ? A4 : LETTER;
    }

    /** mm. */
    public double width() {
        return width;
    }

    /** mm. */
    public double height() {
        return height;
    }
}
