package org.standwright.design.wall.area;

import org.standwright.design.wall.Obstacle;
import org.standwright.geom.Rect;

/**
 * What one obstacle keeps free of cleats, in the wall's frame, x to the right and y upwards, mm.
 *
 * @param at its place among the obstacles of the wall, from 0
 * @param itself the obstacle, within the wall
 * @param kept that and all that stays free around it, within the box around the wall
 * @param depth how far it stands out from the wall, mm
 */
public record Zone(int at, String name, Obstacle.Kind kind, Rect itself, Rect kept, double depth) {}
