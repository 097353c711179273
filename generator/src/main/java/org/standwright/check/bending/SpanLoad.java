package org.standwright.check.bending;

import org.standwright.geom.Require;

/**
 * A load on a span, downwards, N, even from one place to another; a point load begins where it ends.
 *
 * @param from distance from the left support, mm
 * @param to the same of its right end, mm
 * @param total N
 */
public record SpanLoad(double from, double to, double total) {
    public SpanLoad {
        Require.notNegative("load", total, "span");
        Require.notNegative("place of the load", from, "span");
        Require.notNegative("length of the load", to - from, "span");
    }

    public static SpanLoad point(double at, double total) {
        return new SpanLoad(at, at, total);
    }

    /** Its lever about the left support divided by the load, mm. */
    double middle() {
        return (from + to) / 2;
    }

    /** Part of it that lies left of {@code x}, times its lever about {@code x}: N·mm. */
    double momentAt(double x) {
        if (x <= from) {
            return 0;
        }
        double past = x - from;
        return x < to ? total * past * past / (2 * (to - from)) : total * (x - middle());
    }

    /** Integrated twice over {@code x}: N·mm³. */
    double bentAt(double x) {
        if (x <= from) {
            return 0;
        }
        double past = x - from;
        if (x < to) {
            return total * past * past * past * past / (24 * (to - from));
        }
        double beyond = x - to;
        return total * (past + beyond) * (past * past + beyond * beyond) / 24;
    }
}
