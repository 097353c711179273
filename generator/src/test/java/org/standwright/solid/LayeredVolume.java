package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * The volume of a machined board by plane areas: between two neighbouring depths every feature either takes its whole
 * footprint or nothing. Footprints are drawn from coordinates on the 1/1024 mm grid and united by JTS.
 */
final class LayeredVolume {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private record Cut(Geometry footprint, double low, double high) {}

    private final Part part;
    private final boolean snapped;
    private final List<Cut> cuts = new ArrayList<>();

    private LayeredVolume(Part part, boolean snapped) {
        this.part = part;
        this.snapped = snapped;
        part.features().forEach(feature -> feature.accept(new Footprints()));
    }

    /** mm³. */
    static double of(Part part) {
        return new LayeredVolume(part, true).volume();
    }

    /** The outlines of all features and of the blank before any rounding, seen from above. */
    static Geometry outlines(Part part) {
        var layered = new LayeredVolume(part, false);
        var lines = new ArrayList<Geometry>();
        lines.add(layered.blank().getBoundary());
        layered.cuts.forEach(cut -> lines.add(cut.footprint.getBoundary()));
        return FACTORY.buildGeometry(lines);
    }

    /** All heights at which a face may lie before any rounding, mm. */
    static List<Double> levels(Part part) {
        return List.copyOf(new LayeredVolume(part, false).heights());
    }

    private TreeSet<Double> heights() {
        var heights = new TreeSet<>(List.of(0.0, on(part.thickness())));
        cuts.forEach(cut -> heights.addAll(List.of(cut.low, cut.high)));
        return heights;
    }

    private double volume() {
        double volume = 0;
        double low = 0;
        for (double high : heights().tailSet(0.0, false)) {
            volume += (high - low) * area((low + high) / 2);
            low = high;
        }
        return volume;
    }

    private double area(double height) {
        var taken = cuts.stream()
                .filter(cut -> cut.low < height && height < cut.high)
                .map(Cut::footprint)
                .toList();
        if (taken.isEmpty()) {
            return blank().getArea();
        }
        var united = OverlayNGRobust.union(FACTORY.buildGeometry(taken));
        return OverlayNGRobust.overlay(blank(), united, OverlayNG.DIFFERENCE).getArea();
    }

    private Geometry blank() {
        return FACTORY.toGeometry(new Envelope(0, on(part.length()), 0, on(part.width())));
    }

    private double on(double mm) {
        return snapped ? Math.rint(mm * 1024) / 1024 : mm;
    }

    private final class Footprints implements FeatureVisitor<Void> {
        @Override
        public Void channel(Channel channel) {
            var area = channel.area();
            var footprint = new Envelope(on(area.x0()), on(area.x1()), on(area.y0()), on(area.y1()));
            return add(FACTORY.toGeometry(footprint), channel.face(), channel.depth());
        }

        @Override
        public Void hole(Hole hole) {
            double r = hole.diameter() / 2;
            // within 0.05 mm of the circle, in steps of four sides from 12 to 64
            int n = 12;
            while (n < 64 && r * (1 - Math.cos(Math.PI / n)) > 0.05) {
                n += 4;
            }
            double reach = r * Math.sqrt(2 * Math.PI / (n * Math.sin(2 * Math.PI / n)));
            var ring = new Coordinate[n + 1];
            for (int i = 0; i < n; i++) {
                double angle = i * 2 * Math.PI / n;
                ring[i] =
                        new Coordinate(on(hole.x() + reach * Math.cos(angle)), on(hole.y() + reach * Math.sin(angle)));
            }
            ring[n] = ring[0];
            return add(FACTORY.createPolygon(ring), hole.face(), hole.depth().orElse(part.thickness()));
        }

        private Void add(Geometry footprint, Face face, double depth) {
            double top = part.thickness();
            cuts.add(
                    face == Face.BENCH
                            ? new Cut(footprint, 0, on(depth))
                            : new Cut(footprint, on(top - depth), on(top)));
            return null;
        }
    }
}
