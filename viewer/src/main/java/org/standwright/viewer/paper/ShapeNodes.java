package org.standwright.viewer.paper;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Shape;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.shape.StrokeType;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;

/** A drawing as nodes for a printer, which keeps lines and letters as such; points of 1/72 inch, y down. */
final class ShapeNodes implements ShapeVisitor<Node> {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final double height;

    private ShapeNodes(double height) {
        this.height = height;
    }

    /** The whole paper, its upper left corner at the origin. */
    static Group of(Drawing paper) {
        var nodes = new ShapeNodes(paper.height());
        return new Group(
                paper.shapes().stream().map(shape -> shape.accept(nodes)).toList());
    }

    @Override
    public Node line(Line line) {
        return inked(
                new javafx.scene.shape.Line(x(line.from()), y(line.from()), x(line.to()), y(line.to())), line.pen());
    }

    @Override
    public Node arc(Arc arc) {
        double radius = points(arc.radius());
        var shape =
                new javafx.scene.shape.Arc(x(arc.centre()), y(arc.centre()), radius, radius, arc.start(), arc.sweep());
        shape.setType(ArcType.OPEN);
        shape.setFill(null);
        return inked(shape, arc.pen());
    }

    @Override
    public Node polygon(Polygon polygon) {
        var corners = polygon.points().stream()
                .flatMap(point -> List.of(x(point), y(point)).stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        var shape = new javafx.scene.shape.Polygon(corners);
        var brightness = polygon.fill().brightness();
        shape.setFill(brightness.isPresent() ? Color.gray(brightness.getAsDouble()) : null);
        return polygon.pen().map(pen -> inked(shape, pen)).orElse(shape);
    }

    @Override
    public Node text(Text text) {
        var measure = TextMeasure.shipped();
        double width = points(measure.width(text.words(), text.size(), text.weight()));
        double back = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        var words = new javafx.scene.text.Text(-back, 0, measure.printable(text.words()));
        words.setFont(Typeface.shipped().of(text.weight(), points(text.size())));
        words.getTransforms().add(new Translate(x(text.at()), y(text.at())));
        if (text.heading() == Text.Heading.UPWARD) {
            words.getTransforms().add(new Rotate(-90));
        }
        return words;
    }

    @Override
    public Node group(org.standwright.drawing.Group group) {
        var together = new Group(
                group.shapes().stream().map(shape -> shape.accept(this)).toList());
        together.getTransforms()
                .add(new Translate(
                        points(group.shift().x()), -points(group.shift().y())));
        return together;
    }

    private static Shape inked(Shape shape, Pen pen) {
        shape.setStroke(Color.BLACK);
        shape.setStrokeType(StrokeType.CENTERED);
        shape.setStrokeLineCap(StrokeLineCap.BUTT);
        shape.setStrokeLineJoin(StrokeLineJoin.MITER);
        shape.setStrokeWidth(points(pen.width()));
        shape.getStrokeDashArray()
                .setAll(pen.dashes().stream().map(ShapeNodes::points).toList());
        return shape;
    }

    static double points(double mm) {
        return mm * POINTS_PER_MM;
    }

    private double x(Point point) {
        return points(point.x());
    }

    private double y(Point point) {
        return points(height - point.y());
    }
}
