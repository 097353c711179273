package org.standwright.drawing;

/** What one output makes of each kind of shape. */
public interface ShapeVisitor<R> {
    R line(Line line);

    R arc(Arc arc);

    R polygon(Polygon polygon);

    R text(Text text);

    R group(Group group);
}
