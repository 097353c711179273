/**
 * One flat board and what is machined into it.
 *
 * <p>Part frame, right-handed, mm: x along the grain from 0 to length, y across it from 0 to width, z through the
 * thickness from the face that lies down on the bench (0) to the show face. A feature is said once here; the solid,
 * the cut list, the sheet plan and the drawing all read it from the part.
 */
package org.standwright.part;
