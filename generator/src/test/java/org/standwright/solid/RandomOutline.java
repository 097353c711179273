package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/** Polygons of 3 to 8 corners at random, concave ones among them. */
final class RandomOutline {
    /** Smallest area of one, mm². */
    private static final double SMALLEST = 20;

    private static final int TRIES = 20;

    private final SplittableRandom random;
    private final double step;

    /**
     * @param step that all corners lie on multiples of, mm
     */
    RandomOutline(SplittableRandom random, double step) {
        this.random = random;
        this.step = step;
    }

    /**
     * One within {@code area}; corners and sides may lie on its border. The whole of {@code area} where the lattice has
     * too few points for another.
     */
    Outline within(Rect area) {
        for (int i = 0; i < TRIES; i++) {
            var corners = corners(area);
            var polygon = polygon(corners);
            if (polygon.getArea() > SMALLEST && polygon.isValid()) {
                return new Outline(corners);
            }
        }
        return Outline.of(area);
    }

    /** Round a middle, each corner at its own distance. */
    private List<Vec2> corners(Rect area) {
        int n = random.nextInt(3, 9);
        double turn = random.nextDouble(2 * Math.PI);
        var corners = new ArrayList<Vec2>();
        for (int i = 0; i < n; i++) {
            double angle = turn + 2 * Math.PI * (i + random.nextDouble(0.8)) / n;
            double reach = random.nextInt(3) == 0 ? 0.8 : random.nextDouble(0.15, 0.8);
            corners.add(new Vec2(
                    on(area.x0(), area.x1(), 0.5 + reach * Math.cos(angle)),
                    on(area.y0(), area.y1(), 0.5 + reach * Math.sin(angle))));
        }
        return corners.stream().distinct().toList();
    }

    static double onGrid(double mm) {
        return Math.rint(mm * Solid.PER_MM) / Solid.PER_MM;
    }

    private double on(double low, double high, double share) {
        double steps = Math.rint((low + share * (high - low)) / step);
        return Math.max(low, Math.min(high, steps * step));
    }

    /** The largest radius that all convex corners can have at once, mm; 0 if the sides don't decide it. */
    static double largestRadius(Outline outline) {
        double largest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.corners().size(); i++) {
            double side = outline.corner(i + 1).minus(outline.corner(i)).length();
            double taken = perRadius(outline, i) + perRadius(outline, i + 1);
            largest = taken > 0 ? Math.min(largest, side / taken) : largest;
        }
        return Double.isFinite(largest) ? largest : 0;
    }

    /** How much of a corner's sides each millimetre of radius takes: 1 / tan(half the angle). */
    private static double perRadius(Outline outline, int i) {
        var back = outline.corner(i - 1).minus(outline.corner(i));
        var on = outline.corner(i + 1).minus(outline.corner(i));
        double inside = Math.atan2(on.cross(back), on.x() * back.x() + on.y() * back.y());
        return inside > 0 ? 1 / Math.tan(inside / 2) : 0;
    }

    /** On the 1/1024 mm grid, where it must not cross itself either. */
    private static Geometry polygon(List<Vec2> corners) {
        if (corners.size() < 3) {
            return Footprints.FACTORY.createPolygon();
        }
        var ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            var corner = corners.get(i % corners.size());
            ring[i] = new Coordinate(onGrid(corner.x()), onGrid(corner.y()));
        }
        return Footprints.FACTORY.createPolygon(ring);
    }
}
