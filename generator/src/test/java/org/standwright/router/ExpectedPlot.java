package org.standwright.router;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.standwright.cutlist.TrimmedParts;
import org.standwright.design.kit.Router;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.part.Banding;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/**
 * What a reader should find in a DXF file, by closed formulas from the features alone. Each line: {@code area}, a layer's
 * first word ('bench' for the face below), depth (or 'through') and the sum of the areas in mm²; {@code round}, face,
 * diameter, depth and how many circles; {@code arcs} and {@code radii}, face, kind, depth and how
 * many arcs or the sum of their radii; {@code spot} and how many.
 */
final class ExpectedPlot implements FeatureVisitor<Void> {
    private static final double SAME = 1e-6;

    private final Part part;
    private final Map<String, Double> found = new TreeMap<>();

    private ExpectedPlot(Part part) {
        this.part = part;
    }

    /** Of a template: everything as designed. */
    static List<String> template(Part part) {
        var expected = new ExpectedPlot(part);
        var outline = part.contour().map(Contour::outline);
        expected.add("area\tshow\toutline\t-", outline.map(Outline::area).orElse(part.length() * part.width()));
        part.features().forEach(feature -> feature.accept(expected));
        return expected.lines();
    }

    private List<String> lines() {
        var lines = new ArrayList<String>();
        found.forEach((key, value) -> lines.add(key + "\t" + String.format(Locale.ROOT, "%.4f", value)));
        return lines;
    }

    private void add(String key, double value) {
        found.merge(key, value, Double::sum);
    }

    private static String depth(double depth) {
        return String.format(Locale.ROOT, "%.2f", Math.round(depth * 100) / 100.0);
    }

    private static String face(Face face) {
        return face == Face.BENCH ? "bench" : "show";
    }

    @Override
    public Void channel(Channel channel) {
        var area = channel.area();
        add(
                "area\t" + face(channel.face()) + "\tchannel\t" + depth(channel.depth()),
                (area.x1() - area.x0()) * (area.y1() - area.y0()));
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        var kind = pocket.depth().isEmpty()
                ? "show\tcutout\t-"
                : face(pocket.face()) + "\tpocket\t" + depth(pocket.depth().getAsDouble());
        double area = 0;
        var corners = pocket.outline().corners();
        for (int i = 0; i < corners.size(); i++) {
            var at = corners.get(i);
            var next = corners.get((i + 1) % corners.size());
            var last = corners.get((i + corners.size() - 1) % corners.size());
            area += (at.x() * next.y() - next.x() * at.y()) / 2;
            double turn = Math.atan2(
                    (at.x() - last.x()) * (next.y() - at.y()) - (at.y() - last.y()) * (next.x() - at.x()),
                    (at.x() - last.x()) * (next.x() - at.x()) + (at.y() - last.y()) * (next.y() - at.y()));
            boolean open = onEdge(at.x(), at.y(), next.x(), next.y()) || onEdge(last.x(), last.y(), at.x(), at.y());
            if (pocket.radius() > 0 && turn > 1e-6 && !open) {
                double r = pocket.radius();
                area -= r * r * (Math.tan(turn / 2) - turn / 2);
                add("arcs\t" + kind, 1);
                add("radii\t" + kind, r);
            }
        }
        add("area\t" + kind, area);
        return null;
    }

    private boolean onEdge(double x0, double y0, double x1, double y1) {
        return both(x0, x1, 0) || both(x0, x1, part.length()) || both(y0, y1, 0) || both(y0, y1, part.width());
    }

    private static boolean both(double a, double b, double edge) {
        return Math.abs(a - edge) < SAME && Math.abs(b - edge) < SAME;
    }

    @Override
    public Void hole(Hole hole) {
        boolean whole = hole.depth().isEmpty();
        round(
                whole ? "show" : face(hole.face()),
                hole.diameter(),
                whole ? "through" : depth(hole.depth().getAsDouble()));
        hole.recess()
                .ifPresent(recess -> round(
                        face(hole.face()),
                        recess.diameter(),
                        recess instanceof Recess.Counterbore flat ? depth(flat.depth()) : "countersink"));
        return null;
    }

    private void round(String face, double diameter, String depth) {
        add("round\t" + face + "\t" + depth(diameter) + "\t" + depth, 1);
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        add("tick\tshow\t" + depth(hole.diameter()) + "\t" + depth(hole.depth()), 1);
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        return null;
    }

    @Override
    public Void contour(Contour contour) {
        return null;
    }

    /** Of a board's top, the outlines, and of parts within their contour all holes. */
    static List<String> top(RoutedSheet sheet, Router router) {
        return board(sheet, router, true);
    }

    static List<String> bottom(RoutedSheet sheet, Router router) {
        return board(sheet, router, false);
    }

    private static List<String> board(RoutedSheet sheet, Router router, boolean top) {
        var total = new TreeMap<String, Double>();
        for (var piece : sheet.pieces()) {
            var part = piece.part();
            if (top) {
                double area = part.contour().isPresent() && part.oversize() == 0
                        ? -1
                        : part.roughLength() * part.roughWidth();
                total.merge(
                        "area\tshow\toutline\t-",
                        area < 0 ? part.contour().get().outline().area() : area,
                        Double::sum);
            }
            boolean upShow = !piece.lie().overturned();
            if (part.oversize() > 0 && TrimmedParts.boredAfter(part)) {
                continue;
            }
            for (var feature : part.features()) {
                if (feature instanceof Hole hole) {
                    hole(hole, part, router, upShow, top, total);
                } else if (feature instanceof Channel channel
                        && areChannelsPlain(sheet, router)
                        && (channel.face() == Face.SHOW) == (upShow == top)) {
                    total.merge(
                            "area\tshow\tchannel\t" + depth(channel.depth()), area(channel, part, router), Double::sum);
                }
            }
        }
        boolean allWithin =
                sheet.pieces().stream().allMatch(piece -> piece.part().contour().isEmpty());
        var lines = new ArrayList<String>();
        total.forEach((key, value) -> {
            if (allWithin || key.startsWith("area\tshow\toutline")) {
                lines.add(key + "\t" + String.format(Locale.ROOT, "%.4f", value));
            }
        });
        return lines;
    }

    private static void hole(
            Hole hole, Part part, Router router, boolean upShow, boolean top, Map<String, Double> total) {
        boolean whole = hole.depth().isEmpty();
        boolean either = whole && hole.recess().isEmpty();
        boolean here = either ? top : (hole.face() == Face.SHOW) == (upShow == top);
        if (!here || crosses(hole, part, router)) {
            return;
        }
        if (hole.diameter() < router.smallestHole() - SAME) {
            total.merge("spot\tshow\t-\t-", 1.0, Double::sum);
        } else {
            var depth = whole ? "through" : depth(hole.depth().getAsDouble());
            total.merge("round\tshow\t" + depth(hole.diameter()) + "\t" + depth, 1.0, Double::sum);
        }
        if (hole.recess().isPresent() && hole.recess().get() instanceof Recess.Counterbore flat) {
            total.merge("round\tshow\t" + depth(flat.diameter()) + "\t" + depth(flat.depth()), 1.0, Double::sum);
        }
    }

    /** Whether it reaches out of the board by more than the bit does. */
    private static boolean crosses(Hole hole, Part part, Router router) {
        double reach = router.bit() / 2;
        var area = hole.area();
        return area.x0() < -reach
                || area.y0() < -reach
                || area.x1() > part.length() + reach
                || area.y1() > part.width() + reach;
    }

    /** Which channels can be told by a formula: those of boards of plain parts with relief of no kind. */
    private static boolean areChannelsPlain(RoutedSheet sheet, Router router) {
        return router.relief() == Router.Relief.NONE
                && sheet.pieces().stream()
                        .flatMap(piece -> piece.part().features().stream())
                        .noneMatch(feature -> feature instanceof Channel channel && channel.width() < router.bit());
    }

    /**
     * Length by width, each side that lies on an edge run out by half a bit from where the part is cut, as into another
     * channel; each inside corner as round as the bit, unless another channel of the face takes it.
     */
    private static double area(Channel channel, Part part, Router router) {
        double r = router.bit() / 2;
        var at = channel.area();
        boolean atX0 = Math.abs(at.x0()) < SAME;
        boolean atX1 = Math.abs(at.x1() - part.length()) < SAME;
        boolean atY0 = Math.abs(at.y0()) < SAME;
        boolean atY1 = Math.abs(at.y1() - part.width()) < SAME;
        boolean left = atX0 || meets(new Rect(at.x0() - r, at.y0(), at.x0(), at.y1()), channel, part);
        boolean right = atX1 || meets(new Rect(at.x1(), at.y0(), at.x1() + r, at.y1()), channel, part);
        boolean low = atY0 || meets(new Rect(at.x0(), at.y0() - r, at.x1(), at.y0()), channel, part);
        boolean high = atY1 || meets(new Rect(at.x0(), at.y1(), at.x1(), at.y1() + r), channel, part);
        double x0 = (left ? -r : 0) + (atX0 ? cover(part, Edge.X0) - part.oversize() : at.x0());
        double x1 = (right ? r : 0) + (atX1 ? part.length() - cover(part, Edge.X1) + part.oversize() : at.x1());
        double y0 = (low ? -r : 0) + (atY0 ? cover(part, Edge.Y0) - part.oversize() : at.y0());
        double y1 = (high ? r : 0) + (atY1 ? part.width() - cover(part, Edge.Y1) + part.oversize() : at.y1());
        int inside = 0;
        inside += left || low || isTaken(at.x0(), at.y0(), channel, part) ? 0 : 1;
        inside += right || low || isTaken(at.x1(), at.y0(), channel, part) ? 0 : 1;
        inside += right || high || isTaken(at.x1(), at.y1(), channel, part) ? 0 : 1;
        inside += left || high || isTaken(at.x0(), at.y1(), channel, part) ? 0 : 1;
        return (x1 - x0) * (y1 - y0) - inside * r * r * (1 - Math.PI / 4);
    }

    private static boolean isTaken(double x, double y, Channel channel, Part part) {
        return part.features().stream()
                .anyMatch(feature -> feature != channel
                        && feature instanceof Channel other
                        && other.face() == channel.face()
                        && other.depth() >= channel.depth() - SAME
                        && other.area().x0() <= x - 0.5
                        && other.area().x1() >= x + 0.5
                        && other.area().y0() <= y - 0.5
                        && other.area().y1() >= y + 0.5);
    }

    /** Whether another channel of the face clears the strip before one end, as deep at least: the bit runs out into it. */
    private static boolean meets(Rect strip, Channel channel, Part part) {
        return part.features().stream()
                .anyMatch(feature -> feature != channel
                        && feature instanceof Channel other
                        && other.face() == channel.face()
                        && other.depth() >= channel.depth() - SAME
                        && other.area().x0() <= strip.x0() + SAME
                        && other.area().x1() >= strip.x1() - SAME
                        && other.area().y0() <= strip.y0() + SAME
                        && other.area().y1() >= strip.y1() - SAME);
    }

    private static double cover(Part part, Edge edge) {
        return part.bands().on(edge).map(Banding::thickness).orElse(0.0);
    }
}
