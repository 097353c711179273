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

/** What a part's features take, drawn with JTS from the part alone: footprints seen from above, bores seen end on. */
final class Footprints implements FeatureVisitor<Void> {
    static final GeometryFactory FACTORY = new GeometryFactory();

    /** Takes its whole footprint between two heights. */
    record Cut(Geometry footprint, double low, double high) {}

    /**
     * Takes its whole section between two places along x ({@code end}) or y.
     *
     * @param section closed ring of (position along the edge, z), convex
     */
    record Bore(Coordinate[] section, boolean end, double from, double to) {
        double low() {
            return FACTORY.createLineString(section).getEnvelopeInternal().getMinY();
        }

        double high() {
            return FACTORY.createLineString(section).getEnvelopeInternal().getMaxY();
        }

        /** What it takes at one height: a rectangle, or nothing. */
        Geometry at(double height) {
            var chord = new Envelope();
            for (int i = 0; i + 1 < section.length; i++) {
                var a = section[i];
                var b = section[i + 1];
                if (a.y != b.y && Math.min(a.y, b.y) <= height && height <= Math.max(a.y, b.y)) {
                    chord.expandToInclude(a.x + (b.x - a.x) * (height - a.y) / (b.y - a.y), height);
                }
            }
            if (!(chord.getWidth() > 0)) {
                return FACTORY.createPolygon();
            }
            return FACTORY.toGeometry(
                    end
                            ? new Envelope(from, to, chord.getMinX(), chord.getMaxX())
                            : new Envelope(chord.getMinX(), chord.getMaxX(), from, to));
        }
    }

    private final Part part;
    private final boolean snapped;
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Bore> bores = new ArrayList<>();

    /**
     * The features of {@code part}.
     *
     * @param snapped whether coordinates move to the 1/1024 mm grid
     */
    Footprints(Part part, boolean snapped) {
        this.part = part;
        this.snapped = snapped;
        part.features().forEach(feature -> feature.accept(this));
    }

    List<Cut> cuts() {
        return cuts;
    }

    List<Bore> bores() {
        return bores;
    }

    Geometry blank() {
        return FACTORY.toGeometry(new Envelope(0, on(part.length()), 0, on(part.width())));
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
        var footprint = FACTORY.createPolygon(circle(hole.x(), hole.y(), hole.diameter() / 2));
        return add(footprint, hole.face(), hole.depth().orElse(part.thickness()));
    }

    @Override
    public Void pocket(Pocket pocket) {
        return add(rounded(pocket), pocket.face(), pocket.depth().orElse(part.thickness()));
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        boolean end = hole.edge().isEnd();
        double reach = end ? part.length() : part.width();
        double from = hole.edge().isFar() ? reach - hole.depth() : 0;
        double to = hole.edge().isFar() ? reach : hole.depth();
        bores.add(new Bore(circle(hole.along(), hole.z(), hole.diameter() / 2), end, on(from), on(to)));
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        throw new UnsupportedOperationException("a bevel is no prism");
    }

    @Override
    public Void contour(Contour contour) {
        throw new UnsupportedOperationException("a contour is no prism");
    }

    private Coordinate[] circle(double x, double y, double r) {
        int n = sides(r);
        double reach = r * Math.sqrt(2 * Math.PI / (n * Math.sin(2 * Math.PI / n)));
        return IntStream.rangeClosed(0, n)
                .mapToDouble(i -> i % n * 2 * Math.PI / n)
                .mapToObj(angle -> new Coordinate(on(x + reach * Math.cos(angle)), on(y + reach * Math.sin(angle))))
                .toArray(Coordinate[]::new);
    }

    /** Within 0.05 mm of the circle, in steps of four sides from 12 to 64. */
    private static int sides(double r) {
        int n = 12;
        while (n < 64 && r * (1 - Math.cos(Math.PI / n)) > 0.05) {
            n += 4;
        }
        return n;
    }

    /** A rectangle with an arc, as a hole of that radius has it, where neither side of a corner is open. */
    private Geometry rounded(Pocket pocket) {
        var area = pocket.area();
        boolean left = on(area.x0()) <= 0;
        boolean right = on(area.x1()) >= on(part.length());
        boolean front = on(area.y0()) <= 0;
        boolean rear = on(area.y1()) >= on(part.width());
        double r = pocket.radius();
        var ring = new ArrayList<Coordinate>();
        ring.addAll(corner(area.x1(), area.y1(), right || rear ? 0 : r, 0));
        ring.addAll(corner(area.x0(), area.y1(), left || rear ? 0 : r, 1));
        ring.addAll(corner(area.x0(), area.y0(), left || front ? 0 : r, 2));
        ring.addAll(corner(area.x1(), area.y0(), right || front ? 0 : r, 3));
        ring.add(ring.get(0));
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private List<Coordinate> corner(double x, double y, double r, int quarter) {
        double middleX = quarter == 0 || quarter == 3 ? x - r : x + r;
        double middleY = quarter < 2 ? y - r : y + r;
        if (r == 0) {
            return List.of(new Coordinate(on(x), on(y)));
        }
        int chords = Math.max(16, sides(r)) / 4;
        double sine = Math.sin(Math.PI / 2 / chords);
        // between its ends the arc's corners stand out so far that its triangles from the middle add up to its sector
        double out = (Math.sqrt(r * r + (chords - 2) * Math.PI / 2 * r * r / sine) - r) / (chords - 2);
        return IntStream.rangeClosed(0, chords)
                .mapToObj(i -> {
                    double angle = Math.PI / 2 * (quarter + (double) i / chords);
                    double reach = i == 0 || i == chords ? r : out;
                    return new Coordinate(on(middleX + reach * Math.cos(angle)), on(middleY + reach * Math.sin(angle)));
                })
                .toList();
    }

    private Void add(Geometry footprint, Face face, double depth) {
        double top = part.thickness();
        cuts.add(face == Face.BENCH ? new Cut(footprint, 0, on(depth)) : new Cut(footprint, on(top - depth), on(top)));
        return null;
    }
}
