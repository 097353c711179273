package org.standwright.viewer.scene.around;

import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/**
 * The floor as a grid of lines.
 *
 * @param area from heavy line to heavy line
 */
public record FloorGrid(Rect area) {
    /** From line to line, mm. */
    public static final double STEP = 100;

    /** From heavy line to heavy line, mm. */
    public static final double HEAVY_STEP = 500;

    /** Floor seen around the furniture at least, mm. */
    private static final double MARGIN = 300;

    /** Width of a line as a share of the floor's diagonal: seen as a whole it is about as wide as a dot of the screen. */
    private static final double WIDTH = 0.0012;

    private static final double HEAVY_WIDTH = 0.0025;

    /** Below what stands on the floor, so that neither shines through the other, mm. */
    private static final double DEPTH = 1;

    /** Just larger than what stands on it. */
    public static FloorGrid around(Box3 furniture) {
        return new FloorGrid(new Rect(
                down(furniture.min().x() - MARGIN),
                down(furniture.min().y() - MARGIN),
                -down(-furniture.max().x() - MARGIN),
                -down(-furniture.max().y() - MARGIN)));
    }

    private static double down(double place) {
        return Math.floor(place / HEAVY_STEP) * HEAVY_STEP + 0.0;
    }

    /** The lines between the heavy ones, seen from above. */
    public Surface lines() {
        return lines(false, WIDTH);
    }

    /** The heavy lines, seen from above. */
    public Surface heavyLines() {
        return lines(true, HEAVY_WIDTH);
    }

    private Surface lines(boolean heavy, double share) {
        double width = share * Math.sqrt(area.width() * area.width() + area.height() * area.height());
        var builder = new SurfaceBuilder();
        for (int i = 0; area.x0() + i * STEP <= area.x1(); i++) {
            double x = area.x0() + i * STEP;
            if (isHeavy(x) == heavy) {
                strip(new Rect(x - width / 2, area.y0(), x + width / 2, area.y1()), builder);
            }
        }
        for (int i = 0; area.y0() + i * STEP <= area.y1(); i++) {
            double y = area.y0() + i * STEP;
            if (isHeavy(y) == heavy) {
                strip(new Rect(area.x0(), y - width / 2, area.x1(), y + width / 2), builder);
            }
        }
        return builder.build();
    }

    private static boolean isHeavy(double place) {
        return place % HEAVY_STEP == 0;
    }

    private static void strip(Rect strip, SurfaceBuilder builder) {
        builder.quad(
                builder.point(strip.x0(), strip.y0(), -DEPTH),
                builder.point(strip.x1(), strip.y0(), -DEPTH),
                builder.point(strip.x1(), strip.y1(), -DEPTH),
                builder.point(strip.x0(), strip.y1(), -DEPTH));
    }
}
