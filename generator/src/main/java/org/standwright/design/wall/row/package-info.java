/**
 * Rows of cleats on walls: where studs are, how high rows run, where each row's strips begin and end and which screws hold
 * them, strip by strip as parts. {@link org.standwright.design.wall.row.WallRows} is the door; it knows no holders.
 *
 * <p>Frame of each wall: x to the right from its left end, heights from the floor's highest point, mm.
 */
package org.standwright.design.wall.row;
