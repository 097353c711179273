/**
 * Will a wall of cleats hold what hangs on it: strips, screws, hangers and holders, each with its load.
 *
 * <p>{@link org.standwright.check.wall.statics} knows forces and no walls.
 */
package org.standwright.check.wall;
