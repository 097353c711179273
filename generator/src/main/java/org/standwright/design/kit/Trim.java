package org.standwright.design.kit;

import org.standwright.geom.Grid;
import org.standwright.geom.Require;

/**
 * What is cut off the edges of a new sheet, blade included, mm. The sheet lies with its length from left to right.
 *
 * @param left off the end at x = 0
 * @param bottom off the edge at y = 0
 */
public record Trim(double left, double right, double bottom, double top) {
    public Trim {
        Require.notNegative("trim on the left", left, "saw");
        Require.notNegative("trim on the right", right, "saw");
        Require.notNegative("trim at the bottom", bottom, "saw");
        Require.notNegative("trim at the top", top, "saw");
    }

    /** The same off every edge. */
    public static Trim all(double each) {
        return new Trim(each, each, each, each);
    }

    /** What a sheet's length loses, mm. */
    public double offLength() {
        return left + right;
    }

    /** What a sheet's width loses, mm. */
    public double offWidth() {
        return bottom + top;
    }

    /** Whether every edge loses the same. */
    public boolean isEven() {
        return Grid.same(left, right) && Grid.same(left, bottom) && Grid.same(left, top);
    }
}
