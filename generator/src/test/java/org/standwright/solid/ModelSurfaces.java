package org.standwright.solid;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.Footprints.Bore;

/**
 * The surfaces of a part before any rounding: upright ones as outlines seen from above, level ones as heights, and the
 * walls of every bore. A vertex of the solid lies on two of these at least.
 */
final class ModelSurfaces {
    private final Geometry outlines;
    private final TreeSet<Double> levels;
    private final List<Bore> bores;

    private ModelSurfaces(Geometry outlines, TreeSet<Double> levels, List<Bore> bores) {
        this.outlines = outlines;
        this.levels = levels;
        this.bores = bores;
    }

    static ModelSurfaces of(Part part) {
        var footprints = new Footprints(part, false);
        var lines = new TreeSet<Geometry>();
        var levels = new TreeSet<>(List.of(0.0, part.thickness()));
        lines.add(footprints.blank().getBoundary());
        footprints.cuts().forEach(cut -> {
            lines.add(cut.footprint().getBoundary());
            levels.addAll(List.of(cut.low(), cut.high()));
        });
        // the bottom of a bore is upright
        footprints
                .bores()
                .forEach(bore ->
                        lines.add(bore.at((bore.low() + bore.high()) / 2).getBoundary()));
        return new ModelSurfaces(Footprints.FACTORY.buildGeometry(lines), levels, footprints.bores());
    }

    /** With the heights half-way up the edges in which a solid may touch itself. */
    ModelSurfaces withMiddles() {
        var more = new TreeSet<>(levels);
        levels.forEach(a -> levels.forEach(b -> more.add((a + b) / 2)));
        return new ModelSurfaces(outlines, more, bores);
    }

    /** Distance of a vertex to the second nearest of the surfaces, mm. */
    double distance(Vec3 vertex) {
        var fromAbove = Footprints.FACTORY.createPoint(new Coordinate(vertex.x(), vertex.y()));
        double level = levels.stream()
                .mapToDouble(height -> Math.abs(height - vertex.z()))
                .min()
                .orElseThrow();
        var walls = bores.stream().mapToDouble(bore -> wall(bore, vertex));
        return DoubleStream.concat(DoubleStream.of(outlines.distance(fromAbove), level), walls)
                .sorted()
                .skip(1)
                .findFirst()
                .orElseThrow();
    }

    private static double wall(Bore bore, Vec3 vertex) {
        double in = bore.end() ? vertex.x() : vertex.y();
        if (in < bore.from() - 1 / 1024.0 || in > bore.to() + 1 / 1024.0) {
            return Double.POSITIVE_INFINITY;
        }
        var endOn = new Coordinate(bore.end() ? vertex.y() : vertex.x(), vertex.z());
        return Footprints.FACTORY.createLineString(bore.section()).distance(Footprints.FACTORY.createPoint(endOn));
    }
}
