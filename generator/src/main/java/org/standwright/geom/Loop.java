package org.standwright.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A closed line of straight sides and circular arcs, counter-clockwise, that meets itself nowhere; the last corner joins
 * the first.
 */
public record Loop(List<Corner> corners) {
    /**
     * Where a side begins.
     *
     * @param bulge of that side, as {@link Bend} says
     */
    public record Corner(Vec2 at, double bulge) {
        /** Where a straight side begins. */
        public Corner(double x, double y) {
            this(new Vec2(x, y), 0);
        }
    }

    /** Takes the corners in either sense; throws if they enclose nothing. */
    public Loop {
        if (corners.size() < 2 || Math.abs(area(corners)) <= Grid.STEP) {
            throw new IllegalArgumentException("loop " + corners + " encloses nothing; give it sides that go round.");
        }
        corners = area(corners) > 0 ? List.copyOf(corners) : reversed(corners);
    }

    public static Loop of(Outline outline) {
        return new Loop(outline.corners().stream().map(at -> new Corner(at, 0)).toList());
    }

    public static Loop of(Rect area) {
        return of(Outline.of(area));
    }

    /** All sides in turn, the one from the first corner first. */
    public List<Bend> sides() {
        return IntStream.range(0, corners.size()).mapToObj(this::side).toList();
    }

    private Bend side(int index) {
        return side(corners, index);
    }

    private static Bend side(List<Corner> corners, int index) {
        var from = corners.get(index);
        return new Bend(from.at, corners.get((index + 1) % corners.size()).at, from.bulge);
    }

    /** mm². */
    public double area() {
        return area(corners);
    }

    /** All the way round, mm. */
    public double length() {
        return sides().stream().mapToDouble(Bend::length).sum();
    }

    /** The smallest rectangle around it. */
    public Rect bounds() {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (var point : sides().stream().flatMap(Loop::outermost).toList()) {
            x0 = Math.min(x0, point.x());
            y0 = Math.min(y0, point.y());
            x1 = Math.max(x1, point.x());
            y1 = Math.max(y1, point.y());
        }
        return new Rect(x0, y0, x1, y1);
    }

    /** Where a side begins, and where it goes furthest right, up, left or down in between. */
    private static Stream<Vec2> outermost(Bend side) {
        if (!side.isArc()) {
            return Stream.of(side.from());
        }
        var centre = side.centre();
        double r = side.radius();
        double start =
                StrictMath.atan2(side.from().y() - centre.y(), side.from().x() - centre.x());
        var points = Stream.<Vec2>builder().add(side.from());
        for (int quarter = 0; quarter < 4; quarter++) {
            double turned = (quarter * Math.PI / 2 - start) * Math.signum(side.bulge());
            double within = turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
            if (within < Math.abs(side.angle())) {
                int x = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
                int y = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
                points.add(centre.plus(new Vec2(x, y).times(r)));
            }
        }
        return points.build();
    }

    /** The loop through the images of its corners under a rigid motion, which may mirror. */
    public Loop moved(UnaryOperator<Vec2> image) {
        var o = image.apply(Vec2.ZERO);
        var ex = image.apply(new Vec2(1, 0)).minus(o);
        var ey = image.apply(new Vec2(0, 1)).minus(o);
        double sense = ex.cross(ey) > 0 ? 1 : -1;
        return new Loop(corners.stream()
                .map(corner -> new Corner(image.apply(corner.at), sense * corner.bulge))
                .toList());
    }

    /**
     * Points on it in turn, so close that its arcs stand off their chords by no more than a tolerance, mm; those of its
     * corners among them.
     */
    public List<Vec2> points(double tolerance) {
        var points = new ArrayList<Vec2>();
        for (var side : sides()) {
            int chords = chords(side, tolerance);
            for (int i = 0; i < chords; i++) {
                points.add(side.at((double) i / chords));
            }
        }
        return points;
    }

    private static int chords(Bend side, double tolerance) {
        if (!side.isArc()) {
            return 1;
        }
        double most = 2 * StrictMath.acos(Math.max(-1, 1 - tolerance / side.radius()));
        return Math.max(1, (int) Math.ceil(Math.abs(side.angle()) / most - Grid.STEP));
    }

    private static double area(List<Corner> corners) {
        var origin = corners.get(0).at;
        double area = 0;
        for (int i = 0; i < corners.size(); i++) {
            var side = side(corners, i);
            area += side.from().minus(origin).cross(side.to().minus(origin)) / 2 + side.segment();
        }
        return area;
    }

    /** The same line run the other way: each side now begins where it ended. */
    private static List<Corner> reversed(List<Corner> corners) {
        var back = new ArrayList<Corner>();
        for (int i = 0; i < corners.size(); i++) {
            var side = side(corners, i);
            back.add(new Corner(side.to(), -side.bulge()));
        }
        Collections.reverse(back);
        return List.copyOf(back);
    }
}
