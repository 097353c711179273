package org.standwright.design.wall.built;

import java.util.List;

/**
 * One row of a wall.
 *
 * @param number from the lowest, 1 for the first; the same number is the same height on every wall
 * @param height of the strips' high edge above the floor, mm
 * @param strips from the left; none where the wall has no room for any at this height
 */
public record Row(int number, double height, List<Strip> strips) {
    public Row {
        strips = List.copyOf(strips);
    }
}
