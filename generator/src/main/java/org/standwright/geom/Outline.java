package org.standwright.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A polygon without holes whose sides meet in its corners only; counter-clockwise, the first corner not repeated. */
public record Outline(List<Vec2> corners) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Takes the corners in either sense; throws if they enclose nothing or sides meet elsewhere. */
    public Outline {
        if (corners.size() < 3 || Math.abs(signedArea(corners)) <= Grid.STEP) {
            throw new IllegalArgumentException("outline " + text(corners)
                    + " encloses nothing; give three corners or more that don't lie in a row.");
        }
        if (!isRectangle(corners) && !FACTORY.createPolygon(ring(corners)).isValid()) {
            throw new IllegalArgumentException(
                    "outline " + text(corners) + " meets itself; list its corners in turn, all the way round.");
        }
        corners = signedArea(corners) > 0 ? List.copyOf(corners) : reversed(corners);
    }

    public static Outline of(Rect area) {
        return new Outline(List.of(
                new Vec2(area.x0(), area.y0()),
                new Vec2(area.x1(), area.y0()),
                new Vec2(area.x1(), area.y1()),
                new Vec2(area.x0(), area.y1())));
    }

    /** mm². */
    public double area() {
        return signedArea(corners);
    }

    /** The smallest rectangle around it. */
    public Rect bounds() {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (var corner : corners) {
            x0 = Math.min(x0, corner.x());
            y0 = Math.min(y0, corner.y());
            x1 = Math.max(x1, corner.x());
            y1 = Math.max(y1, corner.y());
        }
        return new Rect(x0, y0, x1, y1);
    }

    /** The outline through the images of all corners, counter-clockwise even where the images are mirrored. */
    public Outline moved(UnaryOperator<Vec2> image) {
        return new Outline(corners.stream().map(image).toList());
    }

    /**
     * What of it lies within a rectangle.
     *
     * @throws IllegalArgumentException if that is nothing, or several pieces
     */
    public Outline within(Rect area) {
        var bounds = bounds();
        if (!Grid.less(bounds.x0(), area.x0())
                && !Grid.less(bounds.y0(), area.y0())
                && !Grid.less(area.x1(), bounds.x1())
                && !Grid.less(area.y1(), bounds.y1())) {
            return this;
        }
        var rest = FACTORY.createPolygon(ring(corners)).intersection(FACTORY.createPolygon(ring(of(area).corners)));
        if (!(rest instanceof Polygon polygon) || polygon.isEmpty()) {
            throw new IllegalArgumentException(
                    "outline " + text(corners) + " is not of one piece within " + area + ".");
        }
        var ring = polygon.getExteriorRing().getCoordinates();
        return new Outline(Arrays.stream(ring)
                .limit(ring.length - 1L)
                .map(at -> new Vec2(at.x, at.y))
                .toList());
    }

    /** A corner, counted round and round. */
    public Vec2 corner(int index) {
        return corners.get(Math.floorMod(index, corners.size()));
    }

    /** Whether it is a rectangle along the axes. */
    public boolean isRectangle() {
        return isRectangle(corners);
    }

    private static boolean isRectangle(List<Vec2> corners) {
        return corners.size() == 4
                && (isRectangle(corners.get(0), corners.get(1), corners.get(2), corners.get(3))
                        || isRectangle(corners.get(1), corners.get(2), corners.get(3), corners.get(0)));
    }

    /** Whether the first side is level and the others go on from there. */
    private static boolean isRectangle(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
        return Grid.same(a.y(), b.y()) && Grid.same(b.x(), c.x()) && Grid.same(c.y(), d.y()) && Grid.same(d.x(), a.x());
    }

    private static double signedArea(List<Vec2> corners) {
        var origin = corners.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < corners.size(); i++) {
            twice += corners.get(i).minus(origin).cross(corners.get(i + 1).minus(origin));
        }
        return twice / 2;
    }

    private static Coordinate[] ring(List<Vec2> corners) {
        return Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(corner -> new Coordinate(corner.x(), corner.y()))
                .toArray(Coordinate[]::new);
    }

    private static List<Vec2> reversed(List<Vec2> corners) {
        var back = new ArrayList<>(corners);
        Collections.reverse(back);
        return List.copyOf(back);
    }

    private static String text(List<Vec2> corners) {
        return corners.stream()
                .map(corner -> String.format(Locale.ROOT, "(%.3f, %.3f)", corner.x(), corner.y()))
                .collect(Collectors.joining(" "));
    }
}
