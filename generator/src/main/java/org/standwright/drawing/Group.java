package org.standwright.drawing;

import java.util.List;

/** Shapes that were drawn round an origin of their own and are moved together. */
public record Group(Point shift, List<Shape> shapes) implements Shape {
    public Group {
        shapes = List.copyOf(shapes);
    }

    @Override
    public <R> R accept(ShapeVisitor<R> visitor) {
        return visitor.group(this);
    }
}
