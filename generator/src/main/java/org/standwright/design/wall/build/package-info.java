/** Walls of cleats put together: rows, holders, places, boards and what is bought. */
package org.standwright.design.wall.build;
