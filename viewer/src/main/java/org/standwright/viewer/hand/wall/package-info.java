/**
 * Walls of cleats as they can be edited by hand, seen from the room side by side: holders that are hung elsewhere, obstacles
 * that are moved and resized, and the text of the design file that results. Lengths are mm; the frame of the picture is
 * that of the first wall, x to the right and y upwards from the floor. Knows no node.
 */
package org.standwright.viewer.hand.wall;
