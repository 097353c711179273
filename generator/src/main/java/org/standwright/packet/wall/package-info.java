/**
 * Pages about walls of cleats: each wall with its strips and holders, the story stick, how strips are ripped and seat,
 * what hangs where and what does not, how each holder is built, and the order of work.
 *
 * <p>Heights of rows are printed as ± from the level line, never from the floor.
 */
package org.standwright.packet.wall;
