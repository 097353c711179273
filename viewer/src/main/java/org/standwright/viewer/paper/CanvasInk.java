package org.standwright.viewer.paper;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.viewer.paper.Flat.Placed;

/**
 * Draws what is in sight of a paper on a canvas, at the screen's own resolution.
 *
 * <p>Letters have sizes of a few millimetres, and JavaFX rounds advance widths of small fonts. So everything is drawn
 * {@link #FINE} times as large under a transformation that makes it as many times smaller: widths are then those of the
 * layout, and letters sharp.
 */
final class CanvasInk implements ShapeVisitor<Void> {
    private static final double FINE = 32;
    /** No line of a paper that is seen near is thinner, pixels: what is thinner fades. */
    private static final double HAIRLINE = 0.8;
    /** Pixels a millimetre from which on a paper is near; from farther away lines may fade. */
    private static final double NEAR = 2.4;
    /** Letters smaller than this are a grey line, pixels. */
    private static final double LEGIBLE = 3;

    private static final Color PAPER = Color.WHITE;
    /** Tells a white paper from a white screen. */
    private static final Color EDGE = Color.gray(0.72);

    private static final Color INK = Color.BLACK;
    private static final Color FAR_LETTERS = Color.gray(0.6);

    private final GraphicsContext on;
    private final Sight sight;
    private final double height;
    private Point shift = new Point(0, 0);

    private CanvasInk(GraphicsContext on, Sight sight, double height) {
        this.on = on;
        this.sight = sight;
        this.height = height;
    }

    /** @param shapes of the drawing, without groups */
    static void draw(Drawing paper, List<Placed> shapes, Sight sight, GraphicsContext on) {
        double wide = on.getCanvas().getWidth();
        double high = on.getCanvas().getHeight();
        on.setTransform(1, 0, 0, 1, 0, 0);
        on.clearRect(0, 0, wide, high);
        double step = sight.scale() / FINE;
        on.setTransform(step, 0, 0, step, sight.left(), sight.y(paper.height()));
        on.setFill(PAPER);
        on.fillRect(0, 0, paper.width() * FINE, paper.height() * FINE);
        on.setStroke(EDGE);
        on.setLineWidth(2 * FINE / sight.scale());
        on.setLineDashes();
        on.strokeRect(0, 0, paper.width() * FINE, paper.height() * FINE);
        on.setStroke(INK);
        on.setLineCap(StrokeLineCap.BUTT);
        on.setLineJoin(StrokeLineJoin.MITER);
        var ink = new CanvasInk(on, sight, paper.height());
        var from = sight.paper(0, high);
        var to = sight.paper(wide, 0);
        for (var placed : shapes) {
            if (placed.isWithin(from.x(), from.y(), to.x(), to.y())) {
                ink.shift = placed.shift();
                placed.shape().accept(ink);
            }
        }
    }

    @Override
    public Void line(Line line) {
        use(line.pen());
        on.strokeLine(x(line.from()), y(line.from()), x(line.to()), y(line.to()));
        return null;
    }

    @Override
    public Void arc(Arc arc) {
        use(arc.pen());
        double across = 2 * arc.radius() * FINE;
        on.strokeArc(
                x(arc.centre()) - across / 2,
                y(arc.centre()) - across / 2,
                across,
                across,
                arc.start(),
                arc.sweep(),
                ArcType.OPEN);
        return null;
    }

    @Override
    public Void polygon(Polygon polygon) {
        var xs = polygon.points().stream().mapToDouble(this::x).toArray();
        var ys = polygon.points().stream().mapToDouble(this::y).toArray();
        polygon.fill().brightness().ifPresent(brightness -> {
            on.setFill(Color.gray(brightness));
            on.fillPolygon(xs, ys, xs.length);
        });
        polygon.pen().ifPresent(pen -> {
            use(pen);
            on.strokePolygon(xs, ys, xs.length);
        });
        return null;
    }

    @Override
    public Void text(Text text) {
        var measure = TextMeasure.shipped();
        double width = measure.width(text.words(), text.size(), text.weight()) * FINE;
        double back = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        boolean turned = text.heading() == Text.Heading.UPWARD;
        if (turned) {
            on.save();
            on.translate(x(text.at()), y(text.at()));
            on.rotate(-90);
        }
        double x = (turned ? 0 : x(text.at())) - back;
        double y = turned ? 0 : y(text.at());
        if (text.size() * sight.scale() < LEGIBLE) {
            on.setFill(FAR_LETTERS);
            on.fillRect(x, y - 0.5 * text.size() * FINE, width, 0.35 * text.size() * FINE);
        } else {
            on.setFill(INK);
            on.setFont(Typeface.shipped().of(text.weight(), text.size() * FINE));
            on.fillText(measure.printable(text.words()), x, y);
        }
        if (turned) {
            on.restore();
        }
        return null;
    }

    @Override
    public Void group(Group group) {
        throw new IllegalArgumentException("a group of shapes has no ink of its own; take it apart first.");
    }

    private void use(Pen pen) {
        double hairline = HAIRLINE / Math.max(NEAR, sight.scale());
        on.setLineWidth(Math.max(pen.width(), hairline) * FINE);
        on.setLineDashes(
                pen.dashes().stream().mapToDouble(length -> length * FINE).toArray());
    }

    private double x(Point point) {
        return (point.x() + shift.x()) * FINE;
    }

    private double y(Point point) {
        return (height - point.y() - shift.y()) * FINE;
    }
}
