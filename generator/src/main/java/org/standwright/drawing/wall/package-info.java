/**
 * Figures of walls of cleats: each wall seen from the room, the story stick, and a section through strip and hanger.
 *
 * <p>Heights of rows are those of the strips' high edges and are printed as ± from the level line, never from the floor.
 * Everything is told apart by lines, hatching and words, so that a printer without colour will do.
 */
package org.standwright.drawing.wall;
