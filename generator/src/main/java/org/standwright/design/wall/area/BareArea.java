package org.standwright.design.wall.area;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/** The bare area of a wall: all within its outline that no zone keeps free. Frame of the wall, mm. */
public final class BareArea {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Outline outline;
    private final Geometry bare;

    private BareArea(Outline outline, Geometry bare) {
        this.outline = outline;
        this.bare = bare;
    }

    public static BareArea of(Outline outline, List<Zone> zones) {
        var kept = zones.stream()
                .map(zone -> (Geometry) polygon(Outline.of(zone.kept())))
                .toList();
        var wall = polygon(outline);
        return new BareArea(outline, kept.isEmpty() ? wall : wall.difference(UnaryUnionOp.union(kept)));
    }

    /** mm². */
    public double size() {
        return bare.getArea();
    }

    /** The pieces that it falls into, from the left; each as its rim and the rims of the holes in it. */
    public List<Patch> patches() {
        return IntStream.range(0, bare.getNumGeometries())
                .mapToObj(bare::getGeometryN)
                .filter(piece -> piece.getArea() > 0)
                .map(piece -> patch((Polygon) piece))
                .sorted(Comparator.comparingDouble(
                                (Patch patch) -> patch.rim().bounds().x0())
                        .thenComparingDouble(patch -> patch.rim().bounds().y0()))
                .toList();
    }

    /** One piece of bare wall. */
    public record Patch(Outline rim, List<Outline> holes) {
        public Patch {
            holes = List.copyOf(holes);
        }
    }

    /**
     * Where the wall is bare over all of the height from {@code low} to {@code high}, from left to right. What only
     * touches the band does not count.
     */
    public List<Interval> free(double low, double high) {
        var bounds = outline.bounds();
        var band = polygon(Outline.of(new Rect(bounds.x0(), low + Grid.STEP, bounds.x1(), high - Grid.STEP)));
        var taken = band.difference(bare);
        var shadows = IntStream.range(0, taken.getNumGeometries())
                .mapToObj(taken::getGeometryN)
                .map(Geometry::getEnvelopeInternal)
                .filter(shadow -> Grid.less(0, shadow.getWidth()))
                .sorted(Comparator.comparingDouble(Envelope::getMinX))
                .toList();
        var free = new ArrayList<Interval>();
        double from = bounds.x0();
        for (var shadow : shadows) {
            add(from, shadow.getMinX(), free);
            from = Math.max(from, shadow.getMaxX());
        }
        add(from, bounds.x1(), free);
        return free;
    }

    private static void add(double from, double to, List<Interval> free) {
        if (Grid.less(from, to)) {
            free.add(new Interval(from, to));
        }
    }

    private static Patch patch(Polygon piece) {
        return new Patch(
                outline(piece.getExteriorRing().getCoordinates()),
                IntStream.range(0, piece.getNumInteriorRing())
                        .mapToObj(hole -> outline(piece.getInteriorRingN(hole).getCoordinates()))
                        .toList());
    }

    private static Outline outline(Coordinate[] ring) {
        return new Outline(Arrays.stream(ring)
                .limit(ring.length - 1L)
                .map(corner -> new Vec2(corner.x, corner.y))
                .toList());
    }

    private static Polygon polygon(Outline outline) {
        var corners = outline.corners();
        return FACTORY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(corner -> new Coordinate(corner.x(), corner.y()))
                .toArray(Coordinate[]::new));
    }
}
