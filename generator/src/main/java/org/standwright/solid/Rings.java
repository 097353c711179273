package org.standwright.solid;

import org.standwright.geom.Outline;
import org.standwright.solid.layer.Ring;

/** Outlines of parts and features on the grid. */
final class Rings {
    private Rings() {}

    static Ring polygon(Outline outline, String part) {
        var uv = new int[2 * outline.corners().size()];
        for (int i = 0; i < outline.corners().size(); i++) {
            uv[2 * i] = Solid.units("coordinate", outline.corner(i).x(), part);
            uv[2 * i + 1] = Solid.units("coordinate", outline.corner(i).y(), part);
        }
        return Ring.tidy(uv);
    }

    /**
     * A regular polygon of the circle's area whose first corner lies in the direction of u; the other quarters are
     * turns of the first.
     */
    static Ring circle(double u, double v, double radius, int sides, String part) {
        double reach = Fineness.cornerRadius(radius, sides);
        var uv = new int[2 * sides];
        int quarter = sides / 4;
        for (int i = 0; i < quarter; i++) {
            double angle = 2 * Math.PI * i / sides;
            double cos = reach * StrictMath.cos(angle);
            double sin = reach * StrictMath.sin(angle);
            put(uv, i, u + cos, v + sin, part);
            put(uv, i + quarter, u - sin, v + cos, part);
            put(uv, i + 2 * quarter, u - cos, v - sin, part);
            put(uv, i + 3 * quarter, u + sin, v - cos, part);
        }
        return new Ring(uv);
    }

    private static void put(int[] uv, int corner, double u, double v, String part) {
        uv[2 * corner] = Solid.units("coordinate", u, part);
        uv[2 * corner + 1] = Solid.units("coordinate", v, part);
    }
}
