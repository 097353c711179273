package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;

/** All shapes of one sort in a figure, those in groups too, each in the frame that it was drawn in. */
final class Ink implements ShapeVisitor<Void> {
    private final List<Shape> all = new ArrayList<>();

    static <S extends Shape> Stream<S> of(List<Shape> shapes, Class<S> sort) {
        var ink = new Ink();
        shapes.forEach(shape -> shape.accept(ink));
        return ink.all.stream().filter(sort::isInstance).map(sort::cast);
    }

    @Override
    public Void line(Line line) {
        all.add(line);
        return null;
    }

    @Override
    public Void arc(Arc arc) {
        all.add(arc);
        return null;
    }

    @Override
    public Void polygon(Polygon polygon) {
        all.add(polygon);
        return null;
    }

    @Override
    public Void text(Text text) {
        all.add(text);
        return null;
    }

    @Override
    public Void group(Group group) {
        group.shapes().forEach(shape -> shape.accept(this));
        return null;
    }
}
