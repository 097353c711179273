package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
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
    private final List<IndexedFacetDistance> outlines;
    private final TreeSet<Double> levels;
    private final List<Sloped> sloped;
    private final boolean touching;

    private ModelSurfaces(
            List<IndexedFacetDistance> outlines, TreeSet<Double> levels, List<Sloped> sloped, boolean touching) {
        this.outlines = outlines;
        this.levels = levels;
        this.sloped = sloped;
        this.touching = touching;
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
        var outlines = lines.stream()
                .map(line -> new IndexedFacetDistance(line.getBoundary()))
                .toList();
        return new ModelSurfaces(outlines, levels, footprints.sloped(), false);
    }

    /** With the vertices half-way up upright edges in which two features may touch. */
    ModelSurfaces withMiddles() {
        return new ModelSurfaces(outlines, levels, sloped, true);
    }

    /** Distance of a vertex to the second nearest of the surfaces, mm. */
    double distance(Vec3 vertex) {
        var fromAbove = Footprints.FACTORY.createPoint(new Coordinate(vertex.x(), vertex.y()));
        var walls = walls(fromAbove);
        double level = levels.stream()
                .mapToDouble(height -> Math.abs(height - vertex.z()))
                .min()
                .orElseThrow();
        double second = second(DoubleStream.concat(
                DoubleStream.of(walls[0], level), sloped.stream().mapToDouble(slope -> slope.distance(vertex))));
        return touching ? Math.min(second, walls[1]) : second;
    }

    /** Distances of the two nearest outlines. */
    private double[] walls(Point fromAbove) {
        double nearest = Double.POSITIVE_INFINITY;
        double next = Double.POSITIVE_INFINITY;
        for (var outline : outlines) {
            double distance = outline.distance(fromAbove);
            next = Math.min(next, Math.max(nearest, distance));
            nearest = Math.min(nearest, distance);
        }
        return new double[] {nearest, next};
    }

    private static double second(DoubleStream distances) {
        return distances.sorted().skip(1).findFirst().orElseThrow();
    }
}
