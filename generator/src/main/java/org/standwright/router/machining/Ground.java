package org.standwright.router.machining;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Banding;
import org.standwright.part.Edge;
import org.standwright.part.Part;
import org.standwright.router.CutOutline;

/** What a part is cut to, and how far the bit may run out past it: half its diameter, which no other part is near. */
final class Ground {
    /** Beside an edge, mm. */
    private static final double NEAR = 1e-3;

    private final Part part;
    private final double bit;
    private final Outline outline;
    private final Geometry area;
    private final Geometry reach;
    private final PreparedGeometry roomy;

    Ground(Part part, double bit) {
        this.part = part;
        this.bit = bit;
        outline = CutOutline.of(part);
        area = Flat.of(outline);
        reach = Flat.grown(area, bit / 2);
        roomy = PreparedGeometryFactory.prepare(Flat.grown(area, bit / 2 + Grid.STEP));
    }

    Outline outline() {
        return outline;
    }

    Geometry area() {
        return area;
    }

    /** Whether a bit that comes here may leave the part. */
    boolean isInside(Vec2 at) {
        return area.contains(Flat.point(at)) && area.getBoundary().distance(Flat.point(at)) > Grid.STEP;
    }

    /** A line, or what of it lies within reach: then with its arcs as chords. */
    List<Loop> clipped(Loop loop) {
        var flat = Flat.of(loop);
        if (roomy.covers(flat)) {
            return List.of(loop);
        }
        return Flat.loops(Flat.both(reach, flat)).stream()
                .filter(piece -> Flat.both(area, Flat.of(piece)).getArea() > Grid.STEP)
                .toList();
    }

    /** Whether it is all within reach. */
    boolean reaches(Geometry flat) {
        return roomy.covers(flat);
    }

    /** Whether any of it lies in the part. */
    boolean touches(Geometry flat) {
        return Flat.both(area, flat).getArea() > Grid.STEP;
    }

    /**
     * How far and which way a side of a pocket runs out: where it lies on an edge of the part there is no wall. No way at
     * all where what covers the edge later is wider than the bit reaches.
     *
     * @param contourToo whether one that lies on the part's contour does so too, which the model leaves closed
     */
    Optional<Vec2> runOut(Vec2 from, Vec2 to, boolean contourToo) {
        for (var edge : Edge.values()) {
            if (lies(from, edge) && lies(to, edge)) {
                double band = part.bands().on(edge).map(Banding::thickness).orElse(0.0);
                double by = Math.max(0, bit / 2 + part.oversize() - band);
                return Optional.of(outwards(edge).times(by));
            }
        }
        if (contourToo && part.contour().isPresent() && part.oversize() == 0 && onContour(from, to)) {
            var way = to.minus(from);
            var by = new Vec2(way.y(), -way.x()).times(bit / 2 / way.length());
            return leaves(from.plus(to).times(0.5), by) ? Optional.of(by) : Optional.empty();
        }
        return Optional.empty();
    }

    /** Whether a way from the contour leads out of the part: not so for a pocket that lies outside. */
    private boolean leaves(Vec2 at, Vec2 by) {
        return by.length() == 0 || !area.intersects(Flat.point(at.plus(by.times(NEAR / by.length()))));
    }

    private boolean onContour(Vec2 from, Vec2 to) {
        var border = area.getBoundary();
        return border.distance(Flat.point(from)) <= Grid.STEP
                && border.distance(Flat.point(to)) <= Grid.STEP
                && border.distance(Flat.point(from.plus(to).times(0.5))) <= Grid.STEP;
    }

    private boolean lies(Vec2 at, Edge edge) {
        return switch (edge) {
            case X0 -> Grid.same(at.x(), 0);
            case X1 -> Grid.same(at.x(), part.length());
            case Y0 -> Grid.same(at.y(), 0);
            case Y1 -> Grid.same(at.y(), part.width());
        };
    }

    private static Vec2 outwards(Edge edge) {
        return switch (edge) {
            case X0 -> new Vec2(-1, 0);
            case X1 -> new Vec2(1, 0);
            case Y0 -> new Vec2(0, -1);
            case Y1 -> new Vec2(0, 1);
        };
    }
}
