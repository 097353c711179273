package org.standwright.design.wall;

import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.kit.Point2;

/**
 * One wall, its framing and what is on it and before it. It is a rectangle of {@code width} and {@code height}, or has the
 * corners of {@code outline}, listed in turn; builders refuse any other choice.
 *
 * @param outline corners, x from the left end of the wall, y above the floor
 */
public record Wall(
        String name,
        OptionalDouble width,
        OptionalDouble height,
        List<Point2> outline,
        Framing framing,
        List<Obstacle> obstacles) {
    public Wall {
        outline = List.copyOf(outline);
        obstacles = List.copyOf(obstacles);
    }
}
