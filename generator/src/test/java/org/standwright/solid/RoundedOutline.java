package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * A pocket seen from above: corners that point outwards are arcs, as chords of equal area, unless one of their sides
 * lies on an edge of the blank.
 */
final class RoundedOutline {
    private final Part part;
    private final double radius;
    private final Coordinate[] corners;
    private final List<Coordinate> ring = new ArrayList<>();
    private final DoubleUnaryOperator on;
    private final double tolerance;

    private RoundedOutline(Pocket pocket, Part part, DoubleUnaryOperator on, double tolerance) {
        this.part = part;
        this.on = on;
        this.tolerance = tolerance;
        radius = pocket.radius();
        corners = pocket.outline().corners().stream()
                .map(corner -> new Coordinate(corner.x(), corner.y()))
                .toArray(Coordinate[]::new);
    }

    /**
     * The outline of {@code pocket} in {@code part}.
     *
     * @param on where a coordinate goes
     */
    static Geometry of(Pocket pocket, Part part, DoubleUnaryOperator on) {
        return of(pocket, part, on, Footprints.TOLERANCE);
    }

    /** The same, its arcs followed within {@code tolerance}, mm. */
    static Geometry of(Pocket pocket, Part part, DoubleUnaryOperator on, double tolerance) {
        var outline = new RoundedOutline(pocket, part, on, tolerance);
        for (int i = 0; i < outline.corners.length; i++) {
            outline.corner(outline.at(i - 1), outline.at(i), outline.at(i + 1));
        }
        outline.ring.add(outline.ring.get(0));
        return Footprints.FACTORY.createPolygon(outline.ring.toArray(Coordinate[]::new));
    }

    private Coordinate at(int corner) {
        return corners[Math.floorMod(corner, corners.length)];
    }

    private void corner(Coordinate before, Coordinate at, Coordinate after) {
        boolean points = Orientation.index(before, at, after) == Orientation.COUNTERCLOCKWISE
                && Math.PI - Angle.angleBetween(before, at, after) > 1e-9;
        if (radius == 0 || !points || isOpen(before, at) || isOpen(at, after)) {
            add(at);
        } else {
            arc(before, at, after);
        }
    }

    /** Whether a side lies on an edge of the blank. */
    private boolean isOpen(Coordinate a, Coordinate b) {
        return both(a.x, b.x, 0) || both(a.x, b.x, part.length()) || both(a.y, b.y, 0) || both(a.y, b.y, part.width());
    }

    private static boolean both(double a, double b, double edge) {
        return Math.abs(a - edge) <= 1e-6 && Math.abs(b - edge) <= 1e-6;
    }

    private void arc(Coordinate before, Coordinate at, Coordinate after) {
        double inside = Angle.angleBetween(before, at, after);
        double turn = Math.PI - inside;
        double taken = radius / Math.tan(inside / 2);
        var start = new LineSegment(at, before).pointAlong(taken / at.distance(before));
        // the centre lies to the left of the side that the arc begins on
        var centre = new LineSegment(start, at).pointAlongOffset(0, radius);
        double first = Angle.angle(centre, start);
        int chords = chords(turn);
        double out = out(turn, chords);
        for (int i = 0; i <= chords; i++) {
            double reach = i == 0 || i == chords ? radius : out;
            double angle = first + turn * i / chords;
            add(new Coordinate(centre.x + reach * Math.cos(angle), centre.y + reach * Math.sin(angle)));
        }
    }

    /** A whole circle's share, 2 at least, and more where the corners would stand out too far. */
    private int chords(double turn) {
        double share = Footprints.sides(radius, tolerance) * turn / (2 * Math.PI);
        int chords = Math.max(2, (int) Math.ceil(share - 1e-9));
        while (out(turn, chords) - radius > tolerance) {
            chords++;
        }
        return chords;
    }

    /**
     * How far the arc's corners between its ends stand out from its middle: so far that the triangles from the middle,
     * of angle d, add up to the sector: (2 r R + (n - 2) R²) sin d = n d r².
     */
    private double out(double turn, int chords) {
        double sine = Math.sin(turn / chords);
        double r = radius;
        if (chords == 2) {
            return turn * r / (2 * sine);
        }
        int between = chords - 2;
        return (Math.sqrt(r * r + between * turn * r * r / sine) - r) / between;
    }

    private void add(Coordinate at) {
        ring.add(new Coordinate(on.applyAsDouble(at.x), on.applyAsDouble(at.y)));
    }
}
