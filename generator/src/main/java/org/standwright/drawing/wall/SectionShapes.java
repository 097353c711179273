package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.HoldWord;
import org.standwright.design.wall.built.Screwing;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Side;
import org.standwright.drawing.figure.View;
import org.standwright.geom.Vec2;
import org.standwright.unit.Units;

/**
 * The section at one scale. Its frame in life: x into the wall from its surface, y up from the strip's high edge, mm.
 */
final class SectionShapes {
    /** How far back board and wall are shown below the strip, mm. */
    private static final double BELOW = 25;
    /** How far a stud is shown beyond the screw's tip, mm. */
    private static final double BEYOND = 15;
    /** Thickness of a washer as drawn, mm. */
    private static final double WASHER = 1.5;

    private final CleatWall walls;
    private final Cleat cleat;
    private final Framing framing;
    private final Screwing screwing;
    private final Scale scale;
    private final TextMeasure measure;

    SectionShapes(CleatWall walls, Scale scale, TextMeasure measure) {
        this.walls = walls;
        this.cleat = walls.design().cleat();
        this.framing = walls.wall(1).wall().framing();
        this.screwing = walls.screwing();
        this.scale = scale;
        this.measure = measure;
    }

    Figure figure() {
        var shapes = new ArrayList<Shape>();
        shapes.addAll(wall());
        shapes.add(polygon(Fill.LIGHT, strip()));
        shapes.add(polygon(Fill.GRAY, hanger()));
        shapes.add(polygon(Fill.WHITE, box(-t() - board(), foot(), -t(), cleat.hangerAbove())));
        shapes.add(dotted());
        screwing.heights().forEach(height -> {
            shapes.addAll(anchor(height - cleat.height()));
            shapes.addAll(screw(height - cleat.height()));
        });
        shapes.addAll(callouts().shapes(scale.paper(back()), measure));
        return new View(shapes, measure)
                .dimension(Side.BELOW, depths())
                .dimension(Side.LEFT, faces())
                .dimension(Side.LEFT, heights())
                .named("Section, scale " + scale + ", " + units().lengthWord());
    }

    /** Covering, and the wood or stone behind it as far as the screw goes. */
    private List<Shape> wall() {
        var shapes = new ArrayList<Shape>();
        if (framing.covering() > 0) {
            shapes.add(polygon(Fill.PALE, box(0, foot(), framing.covering(), head())));
        }
        shapes.add(polygon(Fill.WHITE, box(framing.covering(), foot(), back(), head())));
        return shapes;
    }

    private List<Vec2> strip() {
        return List.of(
                new Vec2(-t(), -cleat.height()),
                new Vec2(0, -cleat.height()),
                new Vec2(0, cleat.blunt() - cleat.rise()),
                new Vec2(-t() + land(), 0),
                new Vec2(-t(), 0));
    }

    private List<Vec2> hanger() {
        double tip = 2 * cleat.blunt() - cleat.rise();
        return List.of(
                new Vec2(-t(), cleat.blunt()),
                new Vec2(-land(), tip),
                new Vec2(0, tip),
                new Vec2(0, cleat.hangerAbove()),
                new Vec2(-t(), cleat.hangerAbove()));
    }

    /** Where hanger and back board are when they come free. */
    private Shape dotted() {
        var lifted = box(-t() - board(), cleat.hangerAbove(), 0, cleat.hangerAbove() + cleat.headroom());
        return new Polygon(lifted.stream().map(this::paper).toList(), Optional.of(Pen.DOTTED), Fill.NONE);
    }

    private List<Shape> screw(double y) {
        double half = walls.design().fixing().screw().diameter() / 2;
        double from = -screwing.under();
        double to = from + screwing.length();
        boolean washer = walls.design().fixing().washer().isPresent();
        double neck = washer ? from : from + 2 * half;
        var shapes = new ArrayList<Shape>();
        if (washer) {
            shapes.addAll(washer(from, y));
        }
        shapes.add(polygon(
                Fill.WHITE,
                List.of(
                        new Vec2(washer ? from - half : from, y - 2 * half),
                        new Vec2(from, y - 2 * half),
                        new Vec2(neck, y - half),
                        new Vec2(to - 2 * half, y - half),
                        new Vec2(to, y),
                        new Vec2(to - 2 * half, y + half),
                        new Vec2(neck, y + half),
                        new Vec2(from, y + 2 * half),
                        new Vec2(washer ? from - half : from, y + 2 * half))));
        shapes.add(new Line(paper(new Vec2(from, y)), paper(new Vec2(to, y)), Pen.THIN));
        return shapes;
    }

    /** In the counterbore that it lies in. */
    private List<Shape> washer(double floor, double y) {
        double half = screwing.recess().diameter() / 2;
        return List.of(
                polygon(Fill.WHITE, box(-t(), y - half, floor, y + half)),
                polygon(Fill.GRAY, box(floor - WASHER, y - half, floor, y + half)));
    }

    /** As wide as its hole, and as long as the screw is in it: its own length is its maker's; none in studs. */
    private List<Shape> anchor(double y) {
        if (!(framing instanceof Framing.Masonry masonry)) {
            return List.of();
        }
        double half = masonry.drill() / 2;
        double tip = screwing.length() - screwing.under();
        return List.of(polygon(Fill.GRAY, box(framing.covering(), y - half, tip, y + half)));
    }

    private Callouts callouts() {
        var units = units();
        var callouts = new Callouts();
        callouts.add("headroom to lift it off", paper(new Vec2(-t() / 2, cleat.hangerAbove() + cleat.headroom() / 2)));
        callouts.add("back board of a holder", paper(new Vec2(-t() - board() / 2, cleat.hangerAbove() * 0.85)));
        callouts.add("hanger", paper(new Vec2(-t() / 2, cleat.hangerAbove() * 0.6)));
        callouts.add("high edge: height of the row", paper(new Vec2(-t(), 0)));
        callouts.add(
                "bevel " + degrees(cleat.tilt()) + " from square",
                paper(new Vec2(-t() / 2, cleat.blunt() - cleat.rise() / 2)));
        if (cleat.blunt() > 0) {
            callouts.add(
                    "tips blunted by " + units.length(cleat.blunt()),
                    paper(new Vec2(-land() / 2, 2 * cleat.blunt() - cleat.rise())));
        }
        callouts.add(
                "screw " + units.length(screwing.length())
                        + walls.design().fixing().washer().stream()
                                .mapToObj(wide -> ", with washer " + units.length(wide))
                                .collect(Collectors.joining()),
                paper(new Vec2(2, screwing.heights().get(0) - cleat.height())));
        if (framing instanceof Framing.Masonry masonry) {
            callouts.add(
                    "anchor in a hole of " + units.length(masonry.drill()),
                    paper(new Vec2(
                            screwing.length() - screwing.under() - 8,
                            screwing.heights().get(0) - cleat.height() - masonry.drill() / 3)));
        }
        callouts.add("strip", paper(new Vec2(-t() / 2, -cleat.height() * 0.9)));
        if (framing.covering() > 0) {
            callouts.add(
                    "wall covering, carries nothing", paper(new Vec2(framing.covering() / 2, -cleat.height() - 6)));
        }
        callouts.add(
                framing instanceof Framing.Masonry
                        ? "sound masonry"
                        : HoldWord.of(framing).one(),
                paper(new Vec2((framing.covering() + back()) / 2, -cleat.height() - BELOW / 2)));
        return callouts;
    }

    private static String degrees(double tilt) {
        return tilt == Math.rint(tilt) ? (long) tilt + "°" : tilt + "°";
    }

    /** Through back board, strip, covering, and as far as the screw goes into what is behind. */
    private List<Span> depths() {
        double tip = screwing.length() - screwing.under();
        var spans = new ArrayList<>(List.of(span(-t() - board(), -t()), span(-t(), 0)));
        if (framing.covering() > 0) {
            spans.add(span(0, framing.covering()));
        }
        spans.add(span(framing.covering(), tip));
        return spans;
    }

    /** Short face of the strip, rise, short face of the hanger. */
    private List<Span> faces() {
        double low = cleat.blunt() - cleat.rise();
        return List.of(
                named("short face", -cleat.height(), low),
                named("rise", low, cleat.blunt()),
                named("short face", cleat.blunt(), cleat.hangerAbove()));
    }

    /** Of the strip below its high edge, of the hanger above it, and what is lifted. */
    private List<Span> heights() {
        return List.of(
                named("strip", -cleat.height(), 0),
                named("hanger", 0, cleat.hangerAbove()),
                named("lift", cleat.hangerAbove(), cleat.hangerAbove() + cleat.headroom()));
    }

    private Span named(String name, double from, double to) {
        return new Span(scale.paper(from), scale.paper(to), name + " " + units().bareLength(to - from));
    }

    private Span span(double from, double to) {
        return new Span(scale.paper(from), scale.paper(to), units().bareLength(to - from));
    }

    private double t() {
        return cleat.thickness();
    }

    /** Thickness of a holder's back, mm. */
    private double board() {
        return walls.design().making().sheet().material().thickness();
    }

    private double land() {
        return t() - cleat.bevelDepth();
    }

    private double foot() {
        return -cleat.height() - BELOW;
    }

    private double head() {
        return cleat.hangerAbove() + cleat.headroom() + 5;
    }

    private double back() {
        return screwing.length() - screwing.under() + BEYOND;
    }

    private Units units() {
        return walls.design().unit();
    }

    private static List<Vec2> box(double x0, double y0, double x1, double y1) {
        return List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
    }

    private Polygon polygon(Fill fill, List<Vec2> corners) {
        return new Polygon(corners.stream().map(this::paper).toList(), Optional.of(Pen.OUTLINE), fill);
    }

    private Point paper(Vec2 at) {
        return new Point(scale.paper(at.x()), scale.paper(at.y()));
    }
}
