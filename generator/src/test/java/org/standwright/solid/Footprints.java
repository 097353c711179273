package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/**
 * What a part's features take, drawn with JTS from the part alone: footprints of all that goes straight down, sections
 * of all that slopes.
 */
final class Footprints implements FeatureVisitor<Void> {
    static final GeometryFactory FACTORY = new GeometryFactory();

    /** Of polygons in files, mm. */
    static final double TOLERANCE = 0.05;

    /** Takes its whole footprint between two heights. */
    record Cut(Geometry footprint, double low, double high) {
        Envelope around() {
            return footprint.getEnvelopeInternal();
        }
    }

    private final Part part;
    private final boolean snapped;
    private final double tolerance;
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Sloped> sloped = new ArrayList<>();
    private Geometry blank;

    /**
     * The features of {@code part}.
     *
     * @param snapped whether coordinates move to the 1/1024 mm grid
     */
    Footprints(Part part, boolean snapped) {
        this(part, snapped, TOLERANCE);
    }

    /** @param tolerance that round things are followed within, mm */
    Footprints(Part part, boolean snapped, double tolerance) {
        this.part = part;
        this.snapped = snapped;
        this.tolerance = tolerance;
        blank = FACTORY.toGeometry(new Envelope(0, on(part.length()), 0, on(part.width())));
        part.features().forEach(feature -> feature.accept(this));
    }

    List<Cut> cuts() {
        return cuts;
    }

    List<Sloped> sloped() {
        return sloped;
    }

    /** Seen from above: the contour, if the part has one. */
    Geometry blank() {
        return blank;
    }

    double thickness() {
        return on(part.thickness());
    }

    private double on(double mm) {
        return snapped ? Math.rint(mm * 1024) / 1024 : mm;
    }

    @Override
    public Void channel(Channel channel) {
        var area = channel.area();
        var footprint = new Envelope(on(area.x0()), on(area.x1()), on(area.y0()), on(area.y1()));
        return add(FACTORY.toGeometry(footprint), channel.face(), channel.depth());
    }

    @Override
    public Void hole(Hole hole) {
        double depth = hole.depth().orElse(part.thickness());
        double r = hole.diameter() / 2;
        int n = sides(r, tolerance);
        if (hole.recess().isPresent()) {
            double wide = hole.recess().get().diameter() / 2;
            if (hole.recess().get() instanceof Recess.Countersink cone) {
                n = sides(wide, tolerance);
                sink(hole, n, (wide - r) / Math.tan(Math.toRadians(cone.angle() / 2)));
            } else if (hole.recess().get() instanceof Recess.Counterbore flat) {
                add(
                        FACTORY.createPolygon(circle(hole.x(), hole.y(), wide, sides(wide, tolerance))),
                        hole.face(),
                        flat.depth());
            }
        }
        return add(FACTORY.createPolygon(circle(hole.x(), hole.y(), r, n)), hole.face(), depth);
    }

    private void sink(Hole hole, int sides, double depth) {
        if (on(depth) > 0) {
            var mouth = circle(hole.x(), hole.y(), hole.recess().orElseThrow().diameter() / 2, sides);
            var bore = circle(hole.x(), hole.y(), hole.diameter() / 2, sides);
            double top = thickness();
            sloped.add(
                    hole.face() == Face.BENCH
                            ? new Sink(mouth, bore, 0, on(depth))
                            : new Sink(mouth, bore, top, top - on(depth)));
        }
    }

    @Override
    public Void pocket(Pocket pocket) {
        return add(
                RoundedOutline.of(pocket, part, this::on, tolerance),
                pocket.face(),
                pocket.depth().orElse(part.thickness()));
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        boolean end = hole.edge().isEnd();
        double reach = end ? part.length() : part.width();
        double from = hole.edge().isFar() ? reach - hole.depth() : 0;
        double to = hole.edge().isFar() ? reach : hole.depth();
        double r = hole.diameter() / 2;
        sloped.add(new Bore(circle(hole.along(), hole.z(), r, sides(r, tolerance)), end, on(from), on(to)));
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        double setback = on(bevel.depth() * Math.tan(Math.toRadians(bevel.tilt())));
        double top = thickness();
        double depth = on(bevel.depth());
        boolean below = bevel.face() == Face.BENCH;
        if (setback > 0 && depth > 0) {
            sloped.add(new BevelStrip(
                    bevel.edge(),
                    on(part.length()),
                    on(part.width()),
                    setback,
                    below ? 0 : top,
                    below ? depth : top - depth));
        }
        return null;
    }

    @Override
    public Void contour(Contour contour) {
        var corners = contour.outline().corners().stream()
                .map(corner -> new Coordinate(on(corner.x()), on(corner.y())))
                .toArray(Coordinate[]::new);
        var ring = new ArrayList<>(List.of(corners));
        ring.add(corners[0]);
        blank = FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
        return null;
    }

    private Coordinate[] circle(double x, double y, double r, int n) {
        double reach = r * Math.sqrt(2 * Math.PI / (n * Math.sin(2 * Math.PI / n)));
        return IntStream.rangeClosed(0, n)
                .mapToDouble(i -> i % n * 2 * Math.PI / n)
                .mapToObj(angle -> new Coordinate(on(x + reach * Math.cos(angle)), on(y + reach * Math.sin(angle))))
                .toArray(Coordinate[]::new);
    }

    /** Within the tolerance of the circle, in steps of four sides from 12 on. */
    static int sides(double r, double tolerance) {
        int n = 12;
        while (r * (1 - Math.cos(Math.PI / n)) > tolerance) {
            n += 4;
        }
        return n;
    }

    private Void add(Geometry footprint, Face face, double depth) {
        double top = part.thickness();
        cuts.add(face == Face.BENCH ? new Cut(footprint, 0, on(depth)) : new Cut(footprint, on(top - depth), on(top)));
        return null;
    }
}
