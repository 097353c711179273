package org.standwright.export.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Text of a DXF file: a group code and its value, each on a line of its own. */
final class Pairs {
    private static final int PLACES = 6;
    private static final int BULGE_PLACES = 12;
    private final StringBuilder text = new StringBuilder();
    private int handles;

    Pairs add(int code, String value) {
        text.append(code < 10 ? "  " : code < 100 ? " " : "")
                .append(code)
                .append('\n')
                .append(value)
                .append('\n');
        return this;
    }

    Pairs add(int code, int value) {
        return add(code, Integer.toString(value));
    }

    /** A length, mm. */
    Pairs add(int code, double value) {
        return add(code, number(value, PLACES));
    }

    /** A bulge: so exact that an arc of some metres lies within a micrometre. */
    Pairs bulge(double value) {
        return add(42, number(value, BULGE_PLACES));
    }

    /** A point, under a code and those 10 and 20 further on. */
    Pairs point(int code, double x, double y) {
        return add(code, x).add(code + 10, y).add(code + 20, 0.0);
    }

    /** A point of a plane. */
    Pairs flatPoint(int code, double x, double y) {
        return add(code, x).add(code + 10, y);
    }

    Pairs section(String name) {
        return add(0, "SECTION").add(2, name);
    }

    Pairs end(String what) {
        return add(0, what);
    }

    /** A handle that no other object has. */
    String handle() {
        handles++;
        return Integer.toHexString(handles).toUpperCase(java.util.Locale.ROOT);
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private static String number(double value, int places) {
        var rounded =
                BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        if (rounded.signum() == 0) {
            return "0.0";
        }
        return rounded.scale() <= 0 ? rounded.toPlainString() + ".0" : rounded.toPlainString();
    }
}
