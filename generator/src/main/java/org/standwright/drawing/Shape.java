package org.standwright.drawing;

/** Something that ink makes on paper. Later shapes lie over earlier ones. */
public sealed interface Shape permits Line, Arc, Polygon, Text, Group {
    <R> R accept(ShapeVisitor<R> visitor);
}
