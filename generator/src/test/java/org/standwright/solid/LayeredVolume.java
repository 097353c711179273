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
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

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
            int n = sides(r);
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

        @Override
        public Void pocket(Pocket pocket) {
            return add(rounded(pocket), pocket.face(), pocket.depth().orElse(part.thickness()));
        }

        /** Rounded where no side of the corner lies on the blank's edge; chords as in {@link #hole}, ends on the arc. */
        private Geometry rounded(Pocket pocket) {
            var area = pocket.area();
            double r = pocket.radius();
            int chords = sides(r) / 4;
            boolean left = on(area.x0()) <= 0;
            boolean front = on(area.y0()) <= 0;
            boolean right = on(area.x1()) >= on(part.length());
            boolean rear = on(area.y1()) >= on(part.width());
            var ring = new ArrayList<Coordinate>();
            for (int corner = 0; corner < 4; corner++) {
                boolean atLeft = corner == 1 || corner == 2;
                boolean atFront = corner > 1;
                double x = atLeft ? area.x0() : area.x1();
                double y = atFront ? area.y0() : area.y1();
                boolean open = (atLeft ? left : right) || (atFront ? front : rear);
                for (int i = 0; i <= chords && !open && r > 0; i++) {
                    double angle = Math.PI / 2 * (corner + (double) i / chords);
                    double mx = atLeft ? x + r : x - r;
                    double my = atFront ? y + r : y - r;
                    ring.add(new Coordinate(on(mx + r * Math.cos(angle)), on(my + r * Math.sin(angle))));
                }
                if (open || r == 0) {
                    ring.add(new Coordinate(on(x), on(y)));
                }
            }
            ring.add(ring.get(0));
            return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
        }

        @Override
        public Void edgeHole(EdgeHole hole) {
            throw new UnsupportedOperationException("no volume for a hole into an edge yet: " + hole.purpose());
        }

        /** Within 0.05 mm of the circle, in steps of four sides from 12 to 64. */
        private int sides(double r) {
            int n = 12;
            while (n < 64 && r * (1 - Math.cos(Math.PI / n)) > 0.05) {
                n += 4;
            }
            return n;
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
