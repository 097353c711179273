package org.standwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/**
 * The surfaces of a part before any rounding: upright ones as outlines seen from above, level ones as heights, and those
 * that slope. A vertex of the solid lies on two of these at least.
 */
final class ModelSurfaces {
    /** Distances beyond this are as good as infinite, mm. */
    private static final double FAR = 1;

    private record Wall(IndexedFacetDistance line, Envelope around) {
        static Wall of(Geometry line) {
            return new Wall(new IndexedFacetDistance(line), line.getEnvelopeInternal());
        }

        /** From above, or {@code least} if it is no nearer than that. */
        double distance(Point point, double least) {
            return around.distance(point.getEnvelopeInternal()) < least ? Math.min(least, line.distance(point)) : least;
        }
    }

    private final List<Wall> walls;
    private final Wall corners;
    private final TreeSet<Double> levels;
    private final List<Sloped> sloped;
    private final boolean inner;

    private ModelSurfaces(List<Wall> walls, Wall corners, TreeSet<Double> levels, List<Sloped> sloped, boolean inner) {
        this.walls = walls;
        this.corners = corners;
        this.levels = levels;
        this.sloped = sloped;
        this.inner = inner;
    }

    static ModelSurfaces of(Part part) {
        var footprints = new Footprints(part, false);
        var lines = new ArrayList<Geometry>(List.of(footprints.blank()));
        var levels = new TreeSet<>(List.of(0.0, part.thickness()));
        footprints.cuts().forEach(cut -> {
            lines.add(cut.footprint());
            levels.addAll(List.of(cut.low(), cut.high()));
        });
        // the bottom of a bore is upright
        footprints.sloped().stream()
                .filter(Bore.class::isInstance)
                .forEach(bore -> lines.add(bore.at((bore.low() + bore.high()) / 2)));
        var corners = lines.stream()
                .flatMap(line -> Arrays.stream(line.getCoordinates()))
                .toArray(Coordinate[]::new);
        return new ModelSurfaces(
                lines.stream().map(line -> Wall.of(line.getBoundary())).toList(),
                Wall.of(Footprints.FACTORY.createMultiPointFromCoords(corners)),
                levels,
                footprints.sloped(),
                false);
    }

    /**
     * With edges in which one feature's own sides or the walls of two features meet: vertices may lie anywhere on those.
     * One lies half-way along wherever a solid touches itself in an edge.
     */
    ModelSurfaces withInnerEdges() {
        return new ModelSurfaces(walls, corners, levels, sloped, true);
    }

    /** Distance of a vertex to the second nearest of the surfaces, at most 1 mm. */
    double distance(Vec3 vertex) {
        var fromAbove = Footprints.FACTORY.createPoint(new Coordinate(vertex.x(), vertex.y()));
        double nearest = FAR;
        double next = FAR;
        for (var wall : walls) {
            double distance = wall.distance(fromAbove, next);
            next = Math.min(next, Math.max(nearest, distance));
            nearest = Math.min(nearest, distance);
        }
        double second = second(DoubleStream.concat(
                DoubleStream.of(nearest, level(vertex)), sloped.stream().mapToDouble(slope -> slope.distance(vertex))));
        return inner
                ? Math.min(Math.min(second, next), Math.min(sidesMeet(vertex), corners.distance(fromAbove, FAR)))
                : second;
    }

    private double level(Vec3 vertex) {
        return levels.stream()
                .mapToDouble(height -> Math.abs(height - vertex.z()))
                .min()
                .orElseThrow();
    }

    private double sidesMeet(Vec3 vertex) {
        return sloped.stream()
                .mapToDouble(slope -> slope.innerDistance(vertex))
                .min()
                .orElse(FAR);
    }

    private static double second(DoubleStream distances) {
        return Math.min(FAR, distances.sorted().skip(1).findFirst().orElseThrow());
    }
}
